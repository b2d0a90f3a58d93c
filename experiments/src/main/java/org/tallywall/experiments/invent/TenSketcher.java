package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands of numbers that add up to ten. */
final class TenSketcher implements Sketcher {
  private static final List<String> PAIRS = List.of("19", "28", "37", "46");
  private static final List<String> TRIPLES = List.of("127", "136", "145", "235");

  @Override
  public LineSketch draw(Luck luck, Level level) {
    boolean three = level == Level.FULL && luck.onceIn(3);
    boolean ten = luck.onceIn(3);
    List<Integer> sizes = ten ? Shapes.besides(luck, 2) : Shapes.whole(luck, level);
    List<String> letters = three ? List.of("n", "m", "k") : List.of("n", "m");
    int groups = Math.max(letters.size(), Math.min(sizes.size() - luck.below(2), 4));
    groups = Math.min(groups, sizes.size());
    List<TileBlock> blocks =
        new ArrayList<>(Others.blocks(luck, sizes.subList(groups, sizes.size())));
    List<String> numbers = new ArrayList<>(letters.subList(0, Math.min(groups, letters.size())));
    while (numbers.size() < groups) {
      String more = luck.pick(letters);
      numbers.add(numbers.indexOf(more), more);
    }
    blocks.addAll(SuitLetters.blocks(luck, numbers, sizes, luck.between(2, 3)));
    if (ten) {
      blocks.add(new TileBlock("1", 'z', 1));
      blocks.add(TileBlock.of("0", 1));
    }
    String where = String.join("", letters) + ": " + figures(luck, three ? TRIPLES : PAIRS);
    return LineSketch.of("ten", blocks, Slide.NONE, where);
  }

  /** Two to four of the sums, in their order. */
  private static String figures(Luck luck, List<String> sums) {
    List<String> some = luck.shuffled(sums).subList(0, luck.between(2, sums.size()));
    return String.join(" ", sums.stream().filter(some::contains).toList());
  }
}
