package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands of a few fixed numbers in several suits: 1s and 9s, or 4s, 5s and 6s. */
final class SetSketcher implements Sketcher {
  private static final int SUITS = 3;

  private final String say;
  private final List<String> set;

  SetSketcher(String say, List<String> set) {
    this.say = say;
    this.set = set;
  }

  @Override
  public LineSketch draw(Luck luck, Level level) {
    List<Integer> sizes = Shapes.whole(luck, level);
    int others = luck.below(level == Level.BEGINNERS ? 2 : 3);
    int groups = Math.max(set.size(), Math.min(sizes.size() - others, SUITS * set.size()));
    List<TileBlock> rest = Others.blocks(luck, sizes.subList(groups, sizes.size()));
    List<String> numbers = numbers(luck, groups);
    int suits = level == Level.BEGINNERS ? 2 : luck.between(2, SUITS);
    List<TileBlock> blocks = SuitLetters.blocks(luck, numbers, sizes.subList(0, groups), suits);
    LineSketch sketch = LineSketch.of(say, join(blocks, rest), Slide.NONE);
    if (level == Level.FULL) {
      sketch = sketch.or(join(turned(blocks), rest));
      boolean distinct = new HashSet<>(numbers).size() == numbers.size();
      sketch = distinct && suits > 1 ? sketch.orOneSuit() : sketch;
    }
    return sketch;
  }

  private List<String> numbers(Luck luck, int groups) {
    List<String> numbers = new ArrayList<>(set);
    while (numbers.size() < groups) {
      String more = luck.pick(set);
      if (numbers.stream().filter(more::equals).count() < SUITS) {
        numbers.add(numbers.indexOf(more), more);
      }
    }
    return numbers;
  }

  /** The same numbers and suits with the sizes moved on by one. */
  private static List<TileBlock> turned(List<TileBlock> blocks) {
    List<TileBlock> turned = new ArrayList<>();
    for (int at = 0; at < blocks.size(); at++) {
      TileBlock block = blocks.get(at);
      int size = blocks.get((at + 1) % blocks.size()).size();
      turned.add(new TileBlock(block.tile(), block.suit(), size));
    }
    return turned;
  }

  private static List<TileBlock> join(List<TileBlock> blocks, List<TileBlock> rest) {
    List<TileBlock> all = new ArrayList<>(rest);
    all.addAll(blocks);
    return all;
  }
}
