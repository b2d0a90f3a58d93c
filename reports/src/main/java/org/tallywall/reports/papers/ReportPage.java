package org.tallywall.reports.papers;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.tallywall.reports.charts.Charts;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Link;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.figure.Figure;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.EndingColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.FaultColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.schema.PassColumns;
import org.tallywall.reports.schema.RatingColumns;
import org.tallywall.reports.schema.WinRateColumns;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.tables.AimTables;
import org.tallywall.reports.tables.CourseTables;
import org.tallywall.reports.tables.DifferenceTables;
import org.tallywall.reports.tables.EffectTables;
import org.tallywall.reports.tables.OtherTables;
import org.tallywall.reports.tables.RatingTable;
import org.tallywall.reports.tables.WayTables;
import org.tallywall.reports.tables.WinTables;
import org.tallywall.reports.words.Wording;

/** The one page that holds everything: answer first, then figures, then where they come from. */
public final class ReportPage {
  private final Results results;
  private final Map<String, String> lines;
  private final List<Link> games;

  /**
   * A page.
   *
   * @param results the results
   * @param lines the tiles of each line by its id; empty where they are not to be printed
   * @param games ways to pages of kept games
   */
  public ReportPage(Results results, Map<String, String> lines, List<Link> games) {
    this.results = results;
    this.lines = lines;
    this.games = games;
  }

  /**
   * The page.
   *
   * @return the document
   */
  public Document document() {
    List<Part> parts = new ArrayList<>(new Provenance(results).notices());
    parts.add(Answers.of(results));
    parts.addAll(Notes.ways(results));
    Charts.first(results).ifPresent(figure -> parts.add(new Part.Chart(figure)));
    parts.add(new Part.Contents());
    section(parts, "Wins and points", Fold.FIXED, wins());
    section(parts, "Deals set aside", Fold.OPEN, faults());
    section(parts, "More charts", Fold.CLOSED, charts());
    section(parts, "Which hands are aimed at and won with", Fold.CLOSED, hands());
    section(parts, "How the games went", Fold.CLOSED, course());
    section(
        parts,
        "Where it came into play",
        Fold.CLOSED,
        grids(EffectTables.of(results), Handles.SORT_AND_FILTER));
    section(parts, "More numbers", Fold.CLOSED, grids(OtherTables.of(results), Handles.SORT));
    section(parts, "Games to look at", Fold.CLOSED, games());
    section(parts, "How sure, and where it comes from", Fold.FIXED, sources());
    section(parts, "The study and the rules in full", Fold.CLOSED, study());
    return new Document(results.question(), parts);
  }

  private static void section(List<Part> parts, String title, Fold fold, List<Part> inner) {
    if (!inner.isEmpty()) {
      parts.add(new Part.Section(title, fold, inner));
    }
  }

  private List<Part> wins() {
    List<Table> tables = new ArrayList<>();
    DifferenceTables differences = new DifferenceTables(results);
    if (differences.any()) {
      tables.addAll(differences.declared());
    }
    if (!results.rows(RatingColumns.FILE).isEmpty()) {
      tables.add(RatingTable.of(results));
    }
    if (!results.rows(WinRateColumns.FILE).isEmpty()) {
      WinTables wins = new WinTables(results);
      tables.addAll(List.of(wins.whole(), wins.parts(), wins.hands()));
    }
    List<Part> parts = grids(tables, Handles.SORT);
    section(
        parts, "Not asked before the run", Fold.CLOSED, grids(differences.besides(), Handles.SORT));
    return parts;
  }

  /** All charts but the one that stands beside the answer. */
  private List<Part> charts() {
    Optional<Figure> first = Charts.first(results);
    List<Part> parts = new ArrayList<>();
    for (Figure figure : Charts.of(results)) {
      if (!figure.equals(first.orElse(null))) {
        parts.add(new Part.Chart(figure));
      }
    }
    return parts;
  }

  private List<Part> hands() {
    List<Part> parts = new ArrayList<>();
    AimTables tables = new AimTables(results, lines);
    if (!results.rows(FamilyColumns.FILE).isEmpty()
        || !results.rows(HandChoiceColumns.FILE).isEmpty()) {
      parts.add(Part.Paragraph.of(Wording.RACKS));
    }
    if (!results.rows(FamilyColumns.FILE).isEmpty()) {
      parts.addAll(grids(List.of(tables.families(), tables.familiesInPlay()), Handles.SORT));
    }
    if (!results.rows(HandChoiceColumns.FILE).isEmpty()) {
      parts.addAll(grids(List.of(tables.lines(), tables.linesInPlay()), Handles.SORT_AND_FILTER));
      if (lines.isEmpty()) {
        parts.add(
            Part.Paragraph.of(
                "The lines themselves are left out, because a card belongs to its publisher; the"
                    + " option --with-card of the command report adds them for your own use."));
      }
    }
    return parts;
  }

  private List<Part> course() {
    List<Table> tables = new ArrayList<>();
    CourseTables course = new CourseTables(results);
    if (!results.rows(PassColumns.FILE).isEmpty()) {
      tables.add(course.passes());
    }
    if (!results.rows(EndingColumns.FILE).isEmpty()) {
      tables.add(course.endings());
    }
    return grids(tables, Handles.SORT);
  }

  private List<Part> faults() {
    return results
        .sheet(FaultColumns.FILE)
        .filter(sheet -> !sheet.rows().isEmpty())
        .map(sheet -> grids(List.of(OtherTables.table("faults", sheet)), Handles.COPY))
        .orElse(List.of());
  }

  private List<Part> games() {
    return games.isEmpty()
        ? List.of()
        : List.of(
            Part.Paragraph.of("The first games of the run, tile by tile:"), new Part.Links(games));
  }

  private List<Part> sources() {
    List<Part> parts = new ArrayList<>(Notes.howSure(results));
    parts.set(0, Part.Paragraph.of(((Part.Paragraph) parts.get(0)).text()));
    parts.add(new Part.Facts(new Provenance(results).facts()));
    parts.add(Part.Paragraph.of("All the numbers, for a spreadsheet:"));
    parts.add(new Part.Links(files()));
    return parts;
  }

  /** The files that lie beside the page. */
  private List<Link> files() {
    List<Link> files = new ArrayList<>();
    for (String name : new TreeSet<>(results.sheets().keySet())) {
      files.add(new Link(name + ".csv", name + ".csv"));
    }
    for (String name : List.of("columns.md", "records.jsonl.gz", "study.json", "manifest.json")) {
      if (Files.isRegularFile(results.folder().resolve(name))) {
        files.add(new Link(name, name));
      }
    }
    return files;
  }

  private List<Part> study() {
    Provenance provenance = new Provenance(results);
    List<Part> parts = new ArrayList<>();
    WayTables.of(results).ifPresent(table -> parts.add(Grids.of(table, Handles.SORT_AND_FILTER)));
    parts.add(provenance.study());
    provenance.rules().ifPresent(rules -> parts.add(Grids.of(rules, Handles.SORT_AND_FILTER)));
    return parts;
  }

  private static List<Part> grids(List<Table> tables, Handles handles) {
    List<Part> parts = new ArrayList<>();
    tables.forEach(table -> parts.add(Grids.of(table, handles)));
    return parts;
  }
}
