package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.hand.ConcreteHands;

/**
 * What guesses came to for one kind of player on one card.
 *
 * @param card the card
 * @param kind the kind of player
 * @param tally what was said and true; the second guess is the one that is judged
 * @param effective how many of the racks proposed counted, on the average
 */
record GuessResult(ConcreteHands card, String kind, GuessTally tally, double effective) {
  /** How far off a chance may be, in 100. */
  private static final double GOAL = 1;

  private static final int JUDGED = 1;

  /** Card and players, as a heading. */
  String title() {
    return String.format(
        Locale.ROOT, "%s, four `%s`: %,d positions", card.card().name(), kind, tally.positions());
  }

  /** In how many tenths the chances are right to within one in 100, a line for each fact. */
  List<String> net() {
    List<String> lines = new ArrayList<>();
    for (GuessTally.Fact fact : GuessTally.Fact.values()) {
      List<Bins.Row> rows = tally.bins(JUDGED, fact).rows();
      List<Bins.Row> right =
          rows.stream().filter(row -> Math.abs(NetResult.off(row)) <= GOAL).toList();
      double chances = 100.0 * count(right) / count(rows);
      long surely = rows.stream().filter(GuessResult::surelyOff).count();
      lines.add(
          String.format(
              Locale.ROOT,
              "%s, four `%s`, that she %s: within %.0f in 100 in %d of %d tenths (%s in 100 of the"
                  + " chances), surely further off in %d. %s.",
              card.card().name(),
              kind,
              fact.words(),
              GOAL,
              right.size(),
              rows.size(),
              InHundred.plain(chances),
              surely,
              NetResult.of(rows)));
    }
    return lines;
  }

  private static long count(List<Bins.Row> rows) {
    return rows.stream().mapToLong(Bins.Row::count).sum();
  }

  /** Whether even the nearer end of the range is further off than the goal. */
  private static boolean surelyOff(Bins.Row row) {
    double low = 100 * (row.said() - row.limits().high());
    double high = 100 * (row.said() - row.limits().low());
    return low > GOAL || high < -GOAL;
  }
}
