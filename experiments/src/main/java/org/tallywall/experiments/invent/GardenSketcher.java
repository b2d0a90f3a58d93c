package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands with many flowers and a few numbers. */
final class GardenSketcher implements Sketcher {
  @Override
  public LineSketch draw(Luck luck, Level level) {
    int flowers = level == Level.BEGINNERS ? 4 : luck.between(4, 6);
    List<Integer> sizes = Shapes.besides(luck, flowers);
    List<TileBlock> blocks = new ArrayList<>();
    if (flowers == 6 && luck.onceIn(2)) {
      blocks.add(TileBlock.of("F", 3));
      blocks.add(TileBlock.of("F", 3));
    } else {
      blocks.add(TileBlock.of("F", flowers));
    }
    if (sizes.size() > 2 && luck.onceIn(3)) {
      int last = sizes.get(sizes.size() - 1);
      sizes = sizes.subList(0, sizes.size() - 1);
      blocks.add(new TileBlock("D", 'x', last));
    }
    int step = sizes.size() <= 3 && luck.onceIn(3) ? 0 : luck.between(1, 2);
    step = 1 + step * (sizes.size() - 1) > 9 ? 1 : step;
    int start = luck.between(1, 9 - step * (sizes.size() - 1));
    List<String> numbers = new ArrayList<>();
    for (int at = 0; at < sizes.size(); at++) {
      numbers.add(String.valueOf(start + at * step));
    }
    int suits = level == Level.BEGINNERS ? luck.between(1, 2) : luck.between(1, 3);
    blocks.addAll(SuitLetters.blocks(luck, numbers, sizes, suits));
    return LineSketch.of("garden", blocks, Slide.ANY);
  }
}
