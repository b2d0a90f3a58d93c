package org.tallywall.reports.tables;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.AimColumns;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.HandChoiceColumns;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.words.Ways;
import org.tallywall.reports.words.Wording;

/** Which lines and families of the card are aimed at and won with, in words for readers. */
public final class AimTables {
  /** So many lines stand in a short table. */
  private static final int SHORT = 8;

  private final Results results;

  /** The tiles of each line by its id; empty where they are not to be printed. */
  private final Map<String, String> lines;

  /**
   * Tables of the lines and sections in a results folder.
   *
   * @param results what a results folder holds
   * @param lines the tiles of each line by its id; empty where they are not to be printed
   */
  public AimTables(Results results, Map<String, String> lines) {
    this.results = results;
    this.lines = Map.copyOf(lines);
  }

  /**
   * Which lines are aimed at and won with.
   *
   * @return the table
   */
  public Table lines() {
    List<CsvFile.Row> rows = results.rows(HandChoiceColumns.FILE);
    List<Pick> picks = line(rows);
    if (!lines.isEmpty()) {
      picks.add(
          Pick.words(
              "tiles",
              "The line itself.",
              row -> lines.getOrDefault(row.text(HandChoiceColumns.LINE), "")));
    }
    picks.add(Pick.count(HandChoiceColumns.VALUE));
    aims(picks);
    return Pick.table("lines", "Which lines are aimed at and won with", picks, rows)
        .note(explained(picks, rows))
        .build();
  }

  /**
   * The sections in short: what is aimed at, what wins, and how often the one leads to the other.
   *
   * @return the table
   */
  public Table familiesInShort() {
    List<CsvFile.Row> rows = byWins(FamilyColumns.FILE);
    List<Pick> picks = family(rows);
    inShort(picks);
    return Pick.table("sections-in-short", "What you aim at, what wins", picks, rows)
        .note(Wording.RACKS)
        .note(explained(picks, rows))
        .build();
  }

  /**
   * The lines that most wins came from, in short.
   *
   * @return the table
   */
  public Table linesInShort() {
    List<CsvFile.Row> rows = byWins(HandChoiceColumns.FILE);
    List<Pick> picks = line(rows);
    inShort(picks);
    return Pick.table(
            "lines-in-short",
            "The lines won with most often",
            picks,
            rows.stream().limit(SHORT).toList())
        .note(Wording.RACKS)
        .note(explained(picks, rows))
        .build();
  }

  private List<CsvFile.Row> byWins(String file) {
    return results.rows(file).stream()
        .sorted(Comparator.comparingLong((CsvFile.Row row) -> -row.count(AimColumns.WINS)))
        .toList();
  }

  /**
   * How games go on with each line.
   *
   * @return the table
   */
  public Table linesInPlay() {
    List<CsvFile.Row> rows = results.rows(HandChoiceColumns.FILE);
    List<Pick> picks = line(rows);
    picks.add(Pick.words(HandChoiceColumns.CONCEALED));
    picks.add(Pick.count(HandChoiceColumns.WAYS));
    play(picks);
    return Pick.table("lines-in-play", "How each line is played", picks, rows).build();
  }

  private List<Pick> line(List<CsvFile.Row> rows) {
    List<Pick> picks = new ArrayList<>();
    arm(picks, rows);
    picks.add(Pick.words(HandChoiceColumns.LINE));
    picks.add(Pick.words(HandChoiceColumns.FAMILY));
    picks.add(Pick.words(HandChoiceColumns.NICKNAME));
    return picks;
  }

  /**
   * Which sections are aimed at and won with.
   *
   * @return the table
   */
  public Table families() {
    List<CsvFile.Row> rows = results.rows(FamilyColumns.FILE);
    List<Pick> picks = family(rows);
    picks.add(Pick.count(FamilyColumns.LINES));
    picks.add(Pick.count(FamilyColumns.WAYS));
    aims(picks);
    return Pick.table("sections", "Which sections are aimed at and won with", picks, rows)
        .note(explained(picks, rows))
        .build();
  }

  /**
   * How games go on with the lines of each section.
   *
   * @return the table
   */
  public Table familiesInPlay() {
    List<CsvFile.Row> rows = results.rows(FamilyColumns.FILE);
    List<Pick> picks = family(rows);
    play(picks);
    return Pick.table("sections-in-play", "How each section is played", picks, rows).build();
  }

  private List<Pick> family(List<CsvFile.Row> rows) {
    List<Pick> picks = new ArrayList<>();
    arm(picks, rows);
    picks.add(Pick.words(FamilyColumns.FAMILY));
    return picks;
  }

  private void arm(List<Pick> picks, List<CsvFile.Row> rows) {
    if (Ways.several(rows)) {
      picks.add(Pick.arm(results, FamilyColumns.ARM));
    }
  }

  private static void aims(List<Pick> picks) {
    picks.add(
        Pick.inHundred(
            AimColumns.AIMED_AFTER_DEAL_SHARE,
            row -> row.number(AimColumns.AIMED_AFTER_DEAL_SHARE)));
    picks.add(Pick.rangeInHundred(AimColumns.AIMED_SHARE));
    picks.add(Pick.rangeInHundred(AimColumns.SHARE_OF_WINS));
    picks.add(Pick.rangeInHundred(AimColumns.WIN_RATE_WITH_IT));
    picks.add(Pick.rangeInHundred(AimColumns.WIN_RATE_WHEN_AIMED));
  }

  private static void inShort(List<Pick> picks) {
    List<Pick> all = new ArrayList<>();
    aims(all);
    picks.addAll(all.subList(1, all.size()));
  }

  private static void play(List<Pick> picks) {
    picks.add(Pick.count(AimColumns.WINS));
    picks.add(Pick.count(AimColumns.SWITCHED_TO));
    picks.add(Pick.count(AimColumns.SWITCHED_FROM));
    picks.add(Pick.mean(AimColumns.WALL_AT_WIN));
    picks.add(Pick.mean(AimColumns.JOKERS_AT_WIN));
    picks.add(Pick.mean(AimColumns.EXPOSURES_AT_WIN));
    picks.add(Pick.mean(AimColumns.POINTS_WHEN_WON));
  }

  private String explained(List<Pick> picks, List<CsvFile.Row> rows) {
    String ranges = Pick.ranges(results, picks, rows);
    return "In 100: of all players, of all wins, or of the players aiming at it after the passes. A player"
        + " aims at one line at a time, by its own account."
        + (ranges.isEmpty() ? "" : " " + ranges);
  }
}
