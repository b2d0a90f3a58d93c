package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands in which winds or dragons play the first part, with a number or two. */
final class HonorSketcher implements Sketcher {
  private final String say;
  private final List<String> named;
  private final List<String> open;

  /**
   * A family.
   *
   * @param say what its lines are like
   * @param named the tiles by name
   * @param open what stands for some of them: letters for winds, dragons of suits
   */
  HonorSketcher(String say, List<String> named, List<String> open) {
    this.say = say;
    this.named = named;
    this.open = open;
  }

  @Override
  public LineSketch draw(Luck luck, Level level) {
    boolean news = named.contains("N") && level == Level.FULL && luck.onceIn(4);
    List<Integer> sizes = news ? Shapes.besides(luck, 4) : Shapes.whole(luck, level);
    int honors = news ? luck.below(2) : luck.between(2, Math.min(3, sizes.size() - 1));
    List<TileBlock> blocks = new ArrayList<>();
    if (news) {
      named.forEach(wind -> blocks.add(TileBlock.of(wind, 1)));
    }
    boolean letters = !news && luck.onceIn(2) && honors <= open.size();
    List<String> tiles = letters ? open : luck.shuffled(named);
    for (int at = 0; at < honors; at++) {
      blocks.add(honor(tiles.get(at), sizes.get(at)));
    }
    List<Integer> rest = sizes.subList(honors, sizes.size());
    boolean flowers = rest.size() > 1 && luck.onceIn(3);
    if (flowers) {
      blocks.add(TileBlock.of("F", rest.get(0)));
      rest = rest.subList(1, rest.size());
    }
    blocks.addAll(numbers(luck, level, rest));
    boolean fixed = letters && open.contains("u");
    return LineSketch.of(say, blocks, fixed ? Slide.NONE : Slide.ANY);
  }

  private static TileBlock honor(String tile, int size) {
    return tile.length() == 1
        ? TileBlock.of(tile, size)
        : new TileBlock(tile.substring(0, 1), tile.charAt(1), size);
  }

  /** The same number again and again, or neighbors. */
  private static List<TileBlock> numbers(Luck luck, Level level, List<Integer> sizes) {
    int step = luck.onceIn(2) && sizes.size() <= 3 ? 0 : luck.between(1, 2);
    int start = luck.between(1, 9 - step * (sizes.size() - 1));
    List<String> numbers = new ArrayList<>();
    for (int at = 0; at < sizes.size(); at++) {
      numbers.add(String.valueOf(start + at * step));
    }
    int suits = level == Level.BEGINNERS ? luck.between(1, 2) : luck.between(1, 3);
    return SuitLetters.blocks(luck, numbers, sizes, suits);
  }
}
