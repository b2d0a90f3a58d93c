package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands of numbers at equal steps: one apart (ladders) or two apart (skips). */
final class StepSketcher implements Sketcher {
  private static final int HIGHEST = 9;

  private final String say;
  private final int step;

  StepSketcher(String say, int step) {
    this.say = say;
    this.step = step;
  }

  @Override
  public LineSketch draw(Luck luck, Level level) {
    boolean cluster = level == Level.FULL && luck.onceIn(7);
    List<Integer> sizes = cluster ? Shapes.besides(luck, 4) : Shapes.whole(luck, level);
    boolean flowers = !cluster && luck.onceIn(3);
    int groups = sizes.size() - (flowers ? 1 : 0);
    int steps = Math.min(groups, 1 + (HIGHEST - 1) / step);
    if (groups >= 4 && luck.onceIn(3)) {
      steps--;
    }
    int start = luck.between(1, HIGHEST - (steps - 1) * step);
    List<TileBlock> blocks = new ArrayList<>();
    if (flowers) {
      blocks.add(TileBlock.of("F", sizes.get(groups)));
    }
    if (cluster) {
      blocks.addAll(cluster(luck, start));
    }
    List<String> numbers = numbers(luck, groups, steps, start);
    blocks.addAll(SuitLetters.blocks(luck, numbers, sizes, suits(luck, level)));
    return LineSketch.of(say, blocks, slide(luck));
  }

  private static int suits(Luck luck, Level level) {
    return level == Level.BEGINNERS ? luck.between(1, 2) : luck.between(1, 3);
  }

  private Slide slide(Luck luck) {
    return step > 1 && luck.onceIn(2) ? Slide.BY_TWO : Slide.ANY;
  }

  /** Ascending numbers, some of them twice where there are more groups than steps. */
  private List<String> numbers(Luck luck, int groups, int steps, int start) {
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < steps; i++) {
      at.add(i);
    }
    while (at.size() < groups) {
      int twice = luck.below(steps);
      at.add(at.indexOf(twice), twice);
    }
    return at.stream().map(i -> String.valueOf(start + i * step)).toList();
  }

  /** Four singles at equal steps, or at whatever steps fit. */
  private List<TileBlock> cluster(Luck luck, int start) {
    List<TileBlock> singles = new ArrayList<>();
    int first = Math.min(start, HIGHEST - 3 * step);
    char suit = luck.onceIn(2) ? 'x' : 'z';
    for (int i = 0; i < 4; i++) {
      singles.add(new TileBlock(String.valueOf(first + i * step), suit, 1));
    }
    return singles;
  }
}
