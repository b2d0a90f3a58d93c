package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.reports.charts.Charts;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.tables.AimTables;
import org.tallywall.reports.tables.CourseTables;
import org.tallywall.reports.tables.DifferenceTables;
import org.tallywall.reports.tables.RatingTable;
import org.tallywall.reports.tables.SquareTable;
import org.tallywall.reports.tables.WinTables;
import org.tallywall.reports.words.Shown;
import org.tallywall.reports.words.Stops;
import org.tallywall.reports.words.Unfinished;
import org.tallywall.reports.words.WayWords;
import org.tallywall.reports.words.Ways;

/** What goes into teaching notes as it is: question, answer, one table, one chart, how sure. */
public final class Notes {
  private Notes() {}

  /**
   * The notes.
   *
   * @param results what a results folder holds
   * @return the document
   */
  public static Document of(Results results) {
    List<Part> parts = new ArrayList<>(new Provenance(results).notices());
    parts.add(Answers.of(results));
    parts.addAll(ways(results));
    parts.addAll(brief(results));
    parts.add(new Part.Section("How sure", Fold.FIXED, howSure(results)));
    return new Document(results.question(), parts);
  }

  /**
   * Who the ways of playing are, below the answer.
   *
   * @param results what a results folder holds
   * @return a sentence or a list of them; nothing where none differ
   */
  public static List<Part> ways(Results results) {
    List<String> sentences = WayWords.sentences(results);
    return sentences.isEmpty()
        ? List.of()
        : List.of(
            sentences.size() == 1
                ? Part.Paragraph.of(sentences.get(0))
                : new Part.Bullets(sentences));
  }

  /**
   * One table and one chart.
   *
   * @param results what a results folder holds
   * @return all of them, in their order
   */
  public static List<Part> brief(Results results) {
    List<Part> parts = new ArrayList<>();
    table(results).forEach(table -> parts.add(Grids.of(table, Handles.COPY)));
    Charts.first(results).ifPresent(figure -> parts.add(new Part.Chart(figure)));
    return parts;
  }

  private static List<Table> table(Results results) {
    DifferenceTables differences = new DifferenceTables(results);
    if (differences.any()) {
      return List.of(differences.brief());
    }
    if (results.sheet(BranchColumns.FILE).isPresent()) {
      return SquareTable.brief(results).stream().toList();
    }
    if (!results.rows(RatingColumns.FILE).isEmpty()) {
      return List.of(RatingTable.of(results));
    }
    return Ways.oneTable(results)
        ? List.of(shown(results))
        : results.rows(WinRateColumns.FILE).isEmpty()
            ? List.of()
            : List.of(new WinTables(results).brief());
  }

  /** What one fixed table is asked about. */
  private static Table shown(Results results) {
    return switch (Shown.of(results)) {
      case SEATS -> new WinTables(results).brief();
      case FAMILIES -> new AimTables(results, Map.of()).familiesInShort();
      case LINES -> new AimTables(results, Map.of()).linesInShort();
      case ENDINGS -> new CourseTables(results).endings();
      case PASSES -> new CourseTables(results).passes();
    };
  }

  /**
   * How many deals, what was fixed before, where it comes from.
   *
   * @param results what a results folder holds
   * @return all of them, in their order
   */
  public static List<Part> howSure(Results results) {
    List<Part> parts = new ArrayList<>();
    parts.add(
        new Part.Paragraph(
            deals(results) + " " + who(results) + stop(results),
            List.of(new Provenance(results).footnote())));
    return parts;
  }

  private static String deals(Results results) {
    long games = results.games().orElse(results.deals());
    String counted = Stops.counted(results);
    return "%s%s, %s games in all, on %s."
        .formatted(
            counted,
            counted.endsWith("deals") ? " were played" : "",
            grouped(games),
            results.manifest().text("card"));
  }

  /** Who sat where, and against whom. */
  private static String who(Results results) {
    if (!results.study().has("others")) {
      return "";
    }
    Object others = results.study().all().get("others");
    Object name = others instanceof Map<?, ?> player ? player.get("player") : others;
    boolean one = results.study().number("seats").isPresent();
    boolean branch = results.study().has("branch");
    String subject = branch ? "The studied player" : "Each way of playing";
    return subject
        + " sat %s, and \u201c%s\u201d in the other three seats. "
            .formatted(
                one
                    ? "in the same seat of every deal"
                    : "in each of the four seats of every deal in turn",
                name);
  }

  private static String stop(Results results) {
    return Stops.of(results).map(Stops::told).orElseGet(() -> Unfinished.number(results));
  }

  private static String grouped(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
