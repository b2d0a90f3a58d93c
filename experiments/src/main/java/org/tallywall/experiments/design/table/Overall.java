package org.tallywall.experiments.design.table;

import java.math.BigInteger;
import java.util.Arrays;
import org.tallywall.core.play.PassStep;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.stats.Quantile;
import org.tallywall.experiments.tally.EndTally;
import org.tallywall.experiments.tally.EndTally.End;
import org.tallywall.experiments.tally.PassTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.schema.OverallColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Figures over all games of one fixed table, each with its range: how games end, when they end, and
 * what the passes bring. One game a deal, so games are independent.
 */
final class Overall {
  private static final String SHARE = "share of games";
  private static final String TILES = "tiles";

  /** Lower edges of the parts of the wall; the last part is the empty wall alone. */
  private static final int[] LOWS = {76, 61, 46, 31, 16, 1, 0};

  private static final int RACKS = 4;

  private final TableTally tally;
  private final double confidence;
  private final TableBuilder table =
      Table.builder("overall", "All games of this table").columns(OverallColumns.all());

  private Overall(TableTally tally, double confidence) {
    this.tally = tally;
    this.confidence = confidence;
  }

  static Table of(TableTally tally, double confidence) {
    Overall overall = new Overall(tally, confidence);
    overall.ends();
    overall.parts();
    overall.passes();
    return overall.table.build();
  }

  private void ends() {
    long games = tally.games();
    long wall = games(End.WALL_GAME);
    long none = games(End.VOID);
    share("won", "", games - wall - none, games);
    share("wall-game", "", wall, games);
    share("void", "", none, games);
    long[] byWall = byWall();
    Quantile half = new Quantile(byWall, confidence);
    row("half-over", "", games, TILES, half.median());
  }

  private void parts() {
    long[] byWall = byWall();
    int top = byWall.length - 1;
    for (int low : LOWS) {
      if (top >= low) {
        long ended = Arrays.stream(byWall, low, top + 1).sum();
        share("ended", top == low ? "0" : top + "-" + low, ended, tally.games());
      }
      top = Math.min(top, low - 1);
    }
  }

  private void passes() {
    PassTally passes = tally.passes();
    share("stopped", "", passes.stopped(), passes.stopAsked());
    for (PassStep step : PassStep.values()) {
      pass(step.text(), step.ordinal());
    }
    pass("courtesy", PassTally.COURTESY);
  }

  private void pass(String name, int pass) {
    PassTally passes = tally.passes();
    mean("away-before", name, pass, passes.before(pass), passes.beforeSquared(pass));
    mean("away-after", name, pass, passes.after(pass), passes.afterSquared(pass));
  }

  private void mean(String figure, String part, int pass, long sum, long squares) {
    long games = tally.passes().games(pass);
    if (games > 0) {
      Moments moments = new Moments(games, BigInteger.valueOf(sum), BigInteger.valueOf(squares));
      row(figure, part, games, TILES, moments.estimate(confidence, RACKS));
    }
  }

  private void share(String figure, String part, long some, long all) {
    if (all > 0) {
      row(figure, part, all, SHARE, new Proportion(some, all).estimate(confidence));
    }
  }

  private void row(String figure, String part, long games, String unit, Estimate value) {
    table.row(
        new Row()
            .set(OverallColumns.FIGURE, figure)
            .set(OverallColumns.PART, part)
            .set(OverallColumns.GAMES, games)
            .set(OverallColumns.UNIT, unit)
            .set(OverallColumns.VALUE, Measures.cell(value))
            .set(OverallColumns.METHOD, Measures.method(value)));
  }

  private long games(End end) {
    long games = 0;
    for (int wall = 0; wall <= tally.ends().most(); wall++) {
      games += tally.ends().games(end, wall);
    }
    return games;
  }

  /** Games by the number of tiles left. */
  private long[] byWall() {
    EndTally ends = tally.ends();
    long[] games = new long[ends.most() + 1];
    for (int wall = 0; wall < games.length; wall++) {
      for (End end : End.values()) {
        games[wall] += ends.games(end, wall);
      }
    }
    return games;
  }
}
