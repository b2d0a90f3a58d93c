package org.tallywall.experiments.gauges;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Moments;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.reports.markdown.MarkdownWriter;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.ResultsFolder;
import org.tallywall.reports.results.ThisProgram;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * Writes the table of {@code strategies/README.md} that says when games of four players of one kind
 * end, of tables that were played before. {@code strategies/endings} does both.
 */
public final class EndingsPage {
  private static final ThisProgram ANY = new ThisProgram("", StreamKey.STREAM_VERSION);

  private static final List<String> WINS =
      List.of("won-by-draw", "won-by-exchange", "won-on-discard", "won-before-play");

  private EndingsPage() {}

  /**
   * Writes the table.
   *
   * @param args the page, and the results folders, each named as its players
   * @throws IOException if the page cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    MarkedPage marked = new MarkedPage(Path.of(args[0]), "endings");
    List<Path> folders = new ArrayList<>();
    for (int at = 1; at < args.length; at++) {
      folders.add(Path.of(args[at]));
    }
    marked.write(text(folders));
  }

  private static String text(List<Path> folders) {
    TableBuilder table =
        Table.builder("endings", "When games end")
            .columns(
                Column.text("four", "The players."),
                Column.decimalInterval("wall", "tiles", "Tiles left in the wall at a win.")
                    .headed("tiles left in the wall at a win"),
                Column.decimalInterval("wall-games", "in 100 games", "Nobody won.")
                    .headed("wall games in 100"));
    Results first = ResultsFolder.read(folders.get(0), ANY);
    for (Path folder : folders) {
      Results results = ResultsFolder.read(folder, ANY);
      table.row(Cell.text(folder.getFileName().toString()), wall(results), wallGames(results));
    }
    String extent =
        String.format(
            Locale.ROOT,
            "%,d deals of each kind, seed %d, on the %s; ranges of %s.",
            first.manifest().whole("deals").orElseThrow(),
            first.manifest().whole("seed").orElseThrow(),
            first.manifest().text("card"),
            Math.round(100 * first.confidence()) + " %");
    return Paragraph.of(extent) + MarkdownWriter.grid(table.build()).strip() + "\n\n";
  }

  /** The mean with its t range; each game is a deal of its own. */
  static Cell wall(Results results) {
    long wins = 0;
    long sum = 0;
    long squares = 0;
    for (CsvFile.Row row : results.rows("endings")) {
      long won = WINS.stream().mapToLong(row::count).sum();
      long wall = row.count("wall");
      wins += won;
      sum += won * wall;
      squares += won * wall * wall;
    }
    Moments moments = new Moments(wins, BigInteger.valueOf(sum), BigInteger.valueOf(squares));
    Interval limits = moments.estimate(results.confidence(), 1).interval().orElseThrow();
    return Cell.interval(moments.mean(), limits.low(), limits.high());
  }

  /** The share of games that nobody won, with Wilson's range. */
  static Cell wallGames(Results results) {
    long none = 0;
    long games = 0;
    for (CsvFile.Row row : results.rows("endings")) {
      none += row.count("wall-games");
      games += row.count("games");
    }
    Proportion share = new Proportion(none, games);
    Interval limits = share.wilson(results.confidence());
    return Cell.interval(100 * share.share(), 100 * limits.low(), 100 * limits.high());
  }
}
