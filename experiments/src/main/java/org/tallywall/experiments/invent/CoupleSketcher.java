package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Slide;

/** Draws hands of seven pairs, or of six pairs and two singles. */
final class CoupleSketcher implements Sketcher {
  private static final int TILES = 14;

  @Override
  public LineSketch draw(Luck luck, Level level) {
    int step = luck.between(1, 2);
    int suits = level == Level.BEGINNERS ? luck.between(1, 2) : luck.between(1, 3);
    int run = luck.between(2, suits == 1 ? 4 : 3);
    int start = luck.between(1, 9 - step * (run - 1));
    List<TileBlock> numbers = new ArrayList<>();
    for (int suit = 0; suit < suits; suit++) {
      for (int at = 0; at < run && numbers.size() < TILES / 2; at++) {
        numbers.add(new TileBlock(String.valueOf(start + at * step), "xyz".charAt(suit), 2));
      }
    }
    int left = TILES - 2 * numbers.size();
    List<Integer> rest = new ArrayList<>();
    for (int pair = 0; pair < left / 2; pair++) {
      rest.add(2);
    }
    if (level == Level.FULL && rest.size() > 1 && luck.onceIn(4)) {
      rest.set(0, 1);
      rest.add(1);
    }
    List<TileBlock> blocks = new ArrayList<>(Others.blocks(luck, rest));
    blocks.addAll(numbers);
    return LineSketch.of("couples", blocks, Slide.ANY);
  }
}
