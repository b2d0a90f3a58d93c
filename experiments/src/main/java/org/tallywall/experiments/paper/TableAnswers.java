package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/** The answer of a study that compares nothing on the same deals: how games fall. */
final class TableAnswers {
  private final Results results;

  private TableAnswers(Results results) {
    this.results = results;
  }

  static Part.Answer of(Results results) {
    TableAnswers answers = new TableAnswers(results);
    List<Part.Paragraph> paragraphs = new ArrayList<>();
    answers.sections().ifPresent(text -> paragraphs.add(Part.Paragraph.of(text)));
    answers.middle().ifPresent(text -> paragraphs.add(Part.Paragraph.of(text)));
    answers.seats().ifPresent(text -> paragraphs.add(Part.Paragraph.of(text)));
    return new Part.Answer(answers.headline(), paragraphs);
  }

  private String headline() {
    List<Sheet.Row> rows = Ways.rows(results);
    if (!Ways.oneTable(results) || rows.isEmpty()) {
      return rows.isEmpty() ? "This study compared nothing." : most(rows);
    }
    long games = rows.get(0).count("games");
    long nobody = rows.get(0).count("wall-game") + rows.get(0).count("void");
    if (games == 0) {
      return "No game was played.";
    }
    Proportion somebody = new Proportion(games - nobody, games);
    Interval range = somebody.estimate(results.confidence()).interval().orElseThrow();
    Ranged share = new Ranged(somebody.share(), range.low(), range.high()).inHundred();
    boolean voids = rows.get(0).count("void") > 0;
    return "Somebody won %s of 100 games (%s); %s."
        .formatted(
            share.estimate().valueText(Sign.MINUS_ONLY),
            share.estimate().rangeText(Sign.MINUS_ONLY),
            voids ? "nobody won the others" : "the others ended as wall games");
  }

  /** Who won most; said with the others that the ranges do not tell apart from it. */
  private String most(List<Sheet.Row> rows) {
    List<Sheet.Row> ranked =
        rows.stream()
            .filter(row -> row.ranged("win-rate").isPresent())
            .sorted(Comparator.comparingDouble((Sheet.Row row) -> -row.need("win-rate")))
            .toList();
    if (ranked.isEmpty()) {
      return "This study compared nothing.";
    }
    Ranged best = ranked.get(0).ranged("win-rate").orElseThrow();
    List<String> close =
        ranked.subList(1, ranked.size()).stream()
            .filter(row -> row.ranged("win-rate").orElseThrow().high() >= best.low())
            .map(row -> Wording.quoted(row.text("arm")))
            .toList();
    return "%s won most: %s of 100 games (%s)%s."
        .formatted(
            Wording.quoted(ranked.get(0).text("arm")),
            best.inHundred().estimate().valueText(Sign.MINUS_ONLY),
            best.inHundred().estimate().rangeText(Sign.MINUS_ONLY),
            close.isEmpty()
                ? ""
                : "; but the ranges do not tell it apart from " + String.join(", ", close));
  }

  private Optional<String> sections() {
    List<Sheet.Row> rows = results.rows("families");
    boolean one = !Ways.several(rows) && rows.stream().anyMatch(row -> row.count("wins") > 0);
    double aimed =
        AimTables.sums("aimed-after-passes", rows).values().stream().mapToDouble(d -> d).sum();
    if (!one || aimed == 0) {
      return Optional.empty();
    }
    Sheet.Row won = most(rows, "wins");
    Sheet.Row sought = most(rows, "aimed-after-passes");
    return Optional.of(
        "Most wins came from the section %s: %s of 100 wins. Most aimed at after the passes: %s, by %s of 100 players."
            .formatted(
                won.text("family"),
                number(100 * won.need("share-of-wins")),
                sought.text("family"),
                number(100 * sought.count("aimed-after-passes") / aimed)));
  }

  private static Sheet.Row most(List<Sheet.Row> rows, String column) {
    Sheet.Row most = rows.get(0);
    for (Sheet.Row row : rows) {
      most = row.count(column) > most.count(column) ? row : most;
    }
    return most;
  }

  /** Half of all games were over when so many tiles were left. */
  private Optional<String> middle() {
    List<Sheet.Row> rows = results.rows("endings");
    if (rows.isEmpty() || Ways.several(rows)) {
      return Optional.empty();
    }
    long games = rows.stream().mapToLong(row -> row.count("games")).sum();
    long over = 0;
    for (Sheet.Row row : rows) {
      over += row.count("games");
      if (2 * over >= games) {
        return Optional.of(
            "Half of all games were over with %s or more tiles left in the wall."
                .formatted(row.text("wall")));
      }
    }
    return Optional.empty();
  }

  private Optional<String> seats() {
    List<Sheet.Row> rows = Ways.rows(results);
    boolean mixed = rows.stream().map(row -> row.text("player")).distinct().count() > 1;
    return Ways.oneTable(results) && mixed
        ? Optional.of(
            "Each player kept its seat, so what is due to the player and what to the seat cannot be"
                + " told apart here; to compare players, let them take each seat in turn.")
        : Optional.empty();
  }

  private static String number(double value) {
    return CellText.grouped(Rounding.nearest(value, 0).toPlainString());
  }
}
