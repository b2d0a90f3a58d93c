package org.tallywall.experiments.answer;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.PairMoments;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.EffectTally;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.TableBuilder;

/**
 * What a habit, or an option at a decision, does where it comes into play, and there alone: the
 * ratio of the summed differences to the games concerned, its standard error made linear over
 * deals.
 */
public final class Effects {
  /** With fewer deals than this an interval by the normal curve would be a guess. */
  public static final int FEW = 30;

  /** What stands in place of a method where there is no range. */
  public static final String TOO_FEW = "too few";

  private static final String GAMES = "games";

  private Effects() {}

  /**
   * The columns that say what something did.
   *
   * @param when says of a game when it counts
   * @return the columns
   */
  public static List<Column> columns(String when) {
    return List.of(
        Column.integer("seat-games", GAMES, "Games of the studied player, whatever happened."),
        Column.integer(GAMES, GAMES, "Games in which " + when + "."),
        Column.integer("deals-reached", "deals", "Deals with such a game."),
        Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then."),
        Column.text("measure", "What is measured."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimalInterval(
            "difference",
            "as in unit",
            "Mean gap to the same games without it, in these games alone."),
        Column.text(
            "method",
            "How the interval was computed; \"too few\" where fewer than "
                + FEW
                + " deals have such a game."));
  }

  /**
   * The rows of one thing that came into play, one for each declared measure.
   *
   * @param table takes the rows
   * @param who the first cells of each
   * @param firing what was counted
   * @param study the study
   * @param certainty how sure ranges are
   */
  public static void rows(
      TableBuilder table, List<Cell> who, FiringTally firing, Study study, Certainty certainty) {
    List<Measure> measures = study.question().measures();
    for (int at = 0; at < measures.size(); at++) {
      if (at > 0 && !study.question().secondary().contains(measures.get(at))) {
        continue;
      }
      Optional<Estimate> effect = effect(firing, at, certainty);
      List<Cell> cells = new ArrayList<>(who);
      cells.add(Cell.whole(firing.seatGames()));
      cells.add(Cell.whole(firing.games()));
      cells.add(Cell.whole(firing.reached()));
      cells.add(Cell.ratio(firing.wall(), firing.games()));
      cells.add(Cell.text(measures.get(at).text()));
      cells.add(Cell.text(Measures.unit(measures.get(at))));
      cells.add(effect.map(Measures::cell).orElse(Cell.empty()));
      cells.add(effect.map(Measures::method).orElse(Cell.text(TOO_FEW)));
      table.row(cells);
    }
  }

  /**
   * The effect where it came into play.
   *
   * @param firing what was counted
   * @param measure the measure's place in the study
   * @param certainty how sure ranges are
   * @return the effect a game; empty where it came into play too rarely to say
   */
  public static Optional<Estimate> effect(FiringTally firing, int measure, Certainty certainty) {
    if (firing.reached() < FEW) {
      return Optional.empty();
    }
    EffectTally effect = firing.effect(measure);
    PairMoments moments =
        new PairMoments(
            firing.deals(),
            effect.difference().value(),
            effect.games().value(),
            effect.differenceSquared().value(),
            effect.product().value(),
            effect.gamesSquared().value());
    Estimate ratio = certainty.shown(moments.estimate(certainty.confidence()));
    boolean nothing = effect.differenceSquared().value().equals(BigInteger.ZERO);
    return Optional.of(
        nothing && certainty.fixed()
            ? Estimate.of(0, new Interval(0, 0), Method.RATIO_OVER_DEALS)
            : ratio);
  }
}
