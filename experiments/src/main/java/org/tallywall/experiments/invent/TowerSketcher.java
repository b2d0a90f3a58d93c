package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands with groups of five and six, which need jokers. */
final class TowerSketcher implements Sketcher {
  @Override
  public LineSketch draw(Luck luck, Level level) {
    List<Integer> sizes = new ArrayList<>(Shapes.tall(luck));
    List<TileBlock> blocks = new ArrayList<>();
    if (!luck.onceIn(3)) {
      blocks.add(TileBlock.of("F", sizes.remove(tallest(sizes))));
    } else if (sizes.size() > 3 || luck.onceIn(3)) {
      blocks.addAll(Others.blocks(luck, List.of(sizes.remove(luck.below(sizes.size())))));
    }
    int step = luck.below(3);
    int start = luck.between(1, 9 - step * (sizes.size() - 1));
    List<String> numbers = new ArrayList<>();
    for (int at = 0; at < sizes.size(); at++) {
      numbers.add(String.valueOf(start + at * step));
    }
    blocks.addAll(SuitLetters.blocks(luck, numbers, sizes, luck.between(1, 3)));
    return LineSketch.of("tower", blocks, Slide.ANY);
  }

  private static int tallest(List<Integer> sizes) {
    return sizes.indexOf(Collections.max(sizes));
  }
}
