package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.strategies.hand.LineWeights;

/** Several opinions on what to aim at, multiplied. */
final class AllWeights implements LineWeights {
  /**
   * What a hand counts for that is left aside: so little that any other goes before it, but enough
   * to tell tiles apart where nothing else is left.
   */
  static final double LEFT_ASIDE = 1e-6;

  private final List<LineWeights> parts;

  private AllWeights(List<LineWeights> parts) {
    this.parts = parts;
  }

  /**
   * Opinions put together.
   *
   * @param parts any number
   * @return one that follows all of them
   */
  static LineWeights of(List<LineWeights> parts) {
    return switch (parts.size()) {
      case 0 -> LineWeights.EVEN;
      case 1 -> parts.get(0);
      default -> new AllWeights(List.copyOf(parts));
    };
  }

  @Override
  public void begin(SeatView view, Rack rack, Reach possible) {
    for (LineWeights part : parts) {
      part.begin(view, rack, possible);
    }
  }

  @Override
  public double of(int hand, Lack lack, int naturals) {
    double weight = 1;
    for (LineWeights part : parts) {
      weight *= part.of(hand, lack, naturals);
    }
    return weight;
  }

  @Override
  public double jokers() {
    double counted = 1;
    for (LineWeights part : parts) {
      counted *= part.jokers();
    }
    return counted;
  }

  @Override
  public int lines(int usual, int least) {
    int lines = usual;
    for (LineWeights part : parts) {
      lines = Math.min(lines, part.lines(usual, least));
    }
    return lines;
  }
}
