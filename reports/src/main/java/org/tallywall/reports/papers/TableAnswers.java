package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.Show;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.tables.RatingNeighbors;
import org.tallywall.reports.words.Listed;
import org.tallywall.reports.words.Shown;
import org.tallywall.reports.words.TableHeadline;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/** The answer of a study that compares nothing on the same deals: how games fall. */
final class TableAnswers {
  private final Results results;
  private final RatingNeighbors neighbors;

  private TableAnswers(Results results) {
    this.results = results;
    this.neighbors = new RatingNeighbors(results);
  }

  static Part.Answer of(Results results) {
    TableAnswers answers = new TableAnswers(results);
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    answers.beside().ifPresent(text -> paragraphs.add(Part.Paragraph.of(text)));
    answers.seats().ifPresent(text -> paragraphs.add(Part.Paragraph.of(text)));
    return new Part.Answer(answers.headline(), paragraphs);
  }

  private String headline() {
    List<CsvFile.Row> rows = Ways.rows(results);
    if (!Ways.oneTable(results) || rows.isEmpty()) {
      return rows.isEmpty() ? "This study compared nothing." : most(rows);
    }
    return new TableHeadline(results).text();
  }

  /** Who won most; said with the others that this run does not tell apart from it. */
  private String most(List<CsvFile.Row> rows) {
    List<CsvFile.Row> ranked =
        rows.stream()
            .filter(row -> row.ranged(WinRateColumns.WIN_RATE).isPresent())
            .sorted(
                Comparator.comparingDouble((CsvFile.Row row) -> -row.need(WinRateColumns.WIN_RATE)))
            .toList();
    if (ranked.isEmpty()) {
      return "This study compared nothing.";
    }
    Ranged best = ranked.get(0).ranged(WinRateColumns.WIN_RATE).orElseThrow();
    List<String> close =
        ranked.subList(1, ranked.size()).stream()
            .filter(row -> isClose(ranked.get(0), row))
            .map(row -> Wording.quoted(row.text(WinRateColumns.ARM)))
            .toList();
    return "%s won most: %s of 100 games (%s)%s."
        .formatted(
            Wording.quoted(ranked.get(0).text(WinRateColumns.ARM)),
            best.inHundred().estimate().valueText(Sign.MINUS_ONLY),
            best.inHundred().estimate().rangeText(Sign.MINUS_ONLY),
            close.isEmpty() ? "" : "; too close to call against " + Listed.and(close));
  }

  /** By the range of their difference where there is one, else where the two ranges overlap. */
  private boolean isClose(CsvFile.Row best, CsvFile.Row other) {
    boolean overlap =
        other.ranged(WinRateColumns.WIN_RATE).orElseThrow().high()
            >= best.ranged(WinRateColumns.WIN_RATE).orElseThrow().low();
    return neighbors
        .above(best.text(WinRateColumns.ARM), other.text(WinRateColumns.ARM))
        .map(above -> !above)
        .orElse(overlap);
  }

  /** How often anybody won, where the headline does not say so. */
  private Optional<String> beside() {
    boolean one = Ways.oneTable(results) && Shown.of(results) != Show.SEATS;
    String somebody = new TableHeadline(results).somebody();
    return one && !somebody.equals(headline()) ? Optional.of(somebody) : Optional.empty();
  }

  private Optional<String> seats() {
    List<CsvFile.Row> rows = Ways.rows(results);
    boolean mixed =
        rows.stream().map(row -> row.text(WinRateColumns.PLAYER)).distinct().count() > 1;
    return Ways.oneTable(results) && mixed
        ? Optional.of(
            "Each player kept its seat, so this run cannot tell the player from the seat; to compare"
                + " players, let them take each seat in turn.")
        : Optional.empty();
  }
}
