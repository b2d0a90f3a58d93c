package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.PairMoments;
import org.tallywall.experiments.stats.Proportion;

/** What was said beside what happened, in bins. */
final class Bins {
  private static final double CONFIDENCE = 0.95;
  private static final Interval NOTHING_KNOWN = new Interval(0, 1);

  private final double[] edges;
  private final GameSums[] happened;
  private final double[] said;

  /**
   * Empty bins.
   *
   * @param edges where each bin begins, ascending; what lies below the first counts to the first
   */
  Bins(double... edges) {
    this.edges = edges.clone();
    happened = new GameSums[edges.length];
    said = new double[edges.length];
    for (int bin = 0; bin < edges.length; bin++) {
      happened[bin] = new GameSums();
    }
  }

  /**
   * Notes one decision.
   *
   * @param place by what its bin is found
   * @param chance what was said, 0 to 1
   * @param came whether it happened
   */
  void note(double place, double chance, boolean came) {
    int bin = edges.length - 1;
    while (bin > 0 && place < edges[bin]) {
      bin--;
    }
    said[bin] += chance;
    happened[bin].add(came ? 1 : 0, 1);
  }

  /** The game is over. */
  void endGame() {
    for (GameSums sums : happened) {
      sums.endGame();
    }
  }

  /** The bins that hold anything. */
  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    for (int bin = 0; bin < edges.length; bin++) {
      PairMoments moments = happened[bin].moments();
      if (moments.y().signum() > 0) {
        double upper = bin + 1 < edges.length ? edges[bin + 1] : 1;
        long count = moments.y().longValueExact();
        rows.add(
            new Row(
                edges[bin],
                upper,
                count,
                said[bin] / count,
                moments.ratio(),
                limits(bin, moments)));
      }
    }
    return rows;
  }

  /**
   * Where it always or never happened, each game counts as one trial; where the games are too few
   * or too alike for a range, it is all there is.
   */
  private Interval limits(int bin, PairMoments moments) {
    boolean never = moments.x().signum() == 0;
    if (never || moments.x().equals(moments.y())) {
      long games = happened[bin].met();
      return new Proportion(never ? 0 : games, games).wilson(CONFIDENCE);
    }
    return moments.estimate(CONFIDENCE).interval().orElse(NOTHING_KNOWN).withinZeroAndOne();
  }

  /**
   * One bin.
   *
   * @param from where it begins
   * @param to where the next begins
   * @param count decisions
   * @param said mean of what was said
   * @param happened share of decisions for which it happened
   * @param limits interval of that share at 95 %, games as clusters
   */
  record Row(double from, double to, long count, double said, double happened, Interval limits) {}
}
