package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands with one number in several suits. */
final class EchoSketcher implements Sketcher {
  private static final List<String> CHOICES =
      List.of("", "", "n: 1 3 5 7 9", "n: 2 4 6 8", "n: 3 6 9", "n: 1 2 3 4 5", "n: 5 6 7 8 9");

  @Override
  public LineSketch draw(Luck luck, Level level) {
    List<Integer> sizes = Shapes.whole(luck, level);
    int groups = luck.between(2, 3);
    List<TileBlock> blocks =
        new ArrayList<>(Others.blocks(luck, sizes.subList(groups, sizes.size())));
    if (level == Level.FULL && luck.onceIn(3)) {
      TileBlock last = blocks.remove(blocks.size() - 1);
      blocks.add(new TileBlock("D", luck.onceIn(2) ? 'x' : 'y', last.size()));
    }
    List<String> numbers = Collections.nCopies(groups, "n");
    blocks.addAll(SuitLetters.blocks(luck, numbers, sizes, groups));
    String where = level == Level.BEGINNERS ? "" : luck.pick(CHOICES);
    return LineSketch.of("echo", blocks, Slide.NONE, where);
  }
}
