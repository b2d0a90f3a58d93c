package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.Table;

/** Which lines and families of the card are aimed at and won with, in words for readers. */
public final class AimTables {
  /** What keeps a reader from choosing a line by its row. */
  public static final String RACKS =
      "Good racks choose good lines: the rows compare different racks, not lines on one rack.";

  private static final String PLAYERS = "in 100 players";

  private static final String AIMERS = "in 100 players that aimed at it";

  /** So many lines stand in a short table. */
  private static final int SHORT = 8;

  private final Results results;

  /** The tiles of each line by its id; empty where they are not to be printed. */
  private final Map<String, String> lines;

  AimTables(Results results, Map<String, String> lines) {
    this.results = results;
    this.lines = Map.copyOf(lines);
  }

  /** Which lines are aimed at and won with. */
  Table lines() {
    List<Sheet.Row> rows = results.rows("hand-choice");
    List<Pick> picks = line(rows);
    if (!lines.isEmpty()) {
      picks.add(
          Pick.words("tiles", "The line itself.", row -> lines.getOrDefault(row.text("line"), "")));
    }
    picks.add(Pick.count("value", "points", "What the line pays."));
    picks.add(Pick.words("concealed", "Whether nothing may be exposed before mahjong."));
    picks.add(Pick.count("ways", "hands", "Ways to make it.").headed("ways to make it"));
    aims(picks);
    return Pick.table("lines", "Which lines are aimed at and won with", picks, rows)
        .note(explained())
        .build();
  }

  /**
   * The sections in short: what is aimed at, what wins, and how often the one leads to the other.
   */
  Table familiesInShort() {
    List<Sheet.Row> rows = byWins("families");
    List<Pick> picks = family(rows);
    inShort(picks);
    return Pick.table("sections-in-short", "What you aim at, what wins", picks, rows)
        .note(RACKS)
        .note(explained())
        .build();
  }

  /** The lines that most wins came from, in short. */
  Table linesInShort() {
    List<Sheet.Row> rows = byWins("hand-choice");
    List<Pick> picks = line(rows);
    inShort(picks);
    return Pick.table(
            "lines-in-short",
            "The lines won with most often",
            picks,
            rows.stream().limit(SHORT).toList())
        .note(RACKS)
        .note(explained())
        .build();
  }

  private List<Sheet.Row> byWins(String file) {
    return results.rows(file).stream()
        .sorted(Comparator.comparingLong((Sheet.Row row) -> -row.count("wins")))
        .toList();
  }

  /** How games go on with each line. */
  Table linesInPlay() {
    List<Sheet.Row> rows = results.rows("hand-choice");
    List<Pick> picks = line(rows);
    play(picks);
    return Pick.table("lines-in-play", "How each line is played", picks, rows).build();
  }

  private List<Pick> line(List<Sheet.Row> rows) {
    List<Pick> picks = new ArrayList<>();
    arm(picks, rows);
    picks.add(Pick.words("line", "The line, by section and number."));
    picks.add(Pick.words("family", "The section of the card.").headed("section"));
    picks.add(Pick.words("nickname", "What the card file calls the line."));
    return picks;
  }

  /** Which sections are aimed at and won with. */
  Table families() {
    List<Sheet.Row> rows = results.rows("families");
    List<Pick> picks = family(rows);
    picks.add(Pick.count("lines", "lines", "Lines of the section."));
    picks.add(Pick.count("ways", "hands", "Ways to make them.").headed("ways to make them"));
    aims(picks);
    return Pick.table("sections", "Which sections are aimed at and won with", picks, rows)
        .note(explained())
        .build();
  }

  /** How games go on with the lines of each section. */
  Table familiesInPlay() {
    List<Sheet.Row> rows = results.rows("families");
    List<Pick> picks = family(rows);
    play(picks);
    return Pick.table("sections-in-play", "How each section is played", picks, rows).build();
  }

  private List<Pick> family(List<Sheet.Row> rows) {
    List<Pick> picks = new ArrayList<>();
    arm(picks, rows);
    picks.add(Pick.words("family", "The section of the card.").headed("section"));
    return picks;
  }

  private void arm(List<Pick> picks, List<Sheet.Row> rows) {
    if (Ways.several(rows)) {
      picks.add(Pick.arm(results));
    }
  }

  private static void aims(List<Pick> picks) {
    picks.add(
        Pick.inHundred(
                "aimed-after-deal-share",
                PLAYERS,
                "Of 100 players, those that aimed at it after the deal.",
                row -> row.number("aimed-after-deal-share"))
            .headed("aimed at after the deal, of 100 players"));
    picks.add(
        Pick.rangeInHundred(
                "aimed-share", PLAYERS, "Of 100 players, those that aimed at it, with the range.")
            .headed("aimed at after the passes, of 100 players"));
    picks.add(
        Pick.rangeInHundred("share-of-wins", "in 100 wins", "Its share of all wins, with range.")
            .headed("of 100 wins"));
    picks.add(
        Pick.rangeInHundred(
                "win-rate-with-it",
                AIMERS,
                "Players that aimed at it after the passes and won with it, and range.")
            .headed("won with it, of 100 that aimed at it after the passes"));
    picks.add(
        Pick.rangeInHundred(
                "win-rate-when-aimed",
                AIMERS,
                "Players that aimed at it after the passes and won, with whatever line, and range.")
            .headed("won with any line, of 100 that aimed at it after the passes"));
  }

  private static void inShort(List<Pick> picks) {
    List<Pick> all = new ArrayList<>();
    aims(all);
    picks.addAll(all.subList(1, all.size()));
  }

  private static void play(List<Pick> picks) {
    picks.add(
        Pick.count("wins", "games", "Games won with it, whatever was aimed at before.")
            .headed("games won"));
    picks.add(
        Pick.count("switched-to", "times", "Times that a player changed to it in play.")
            .headed("times changed to"));
    picks.add(
        Pick.count("switched-from", "times", "Times that a player left it in play.")
            .headed("times left"));
    picks.add(
        Pick.mean("wall-at-win", "tiles", "Mean number of tiles left in the wall at the win.")
            .headed("tiles left in the wall at the win"));
    picks.add(
        Pick.mean("jokers-at-win", "tiles", "Mean number of jokers in the winning hand.")
            .headed("jokers in the winning hand"));
    picks.add(
        Pick.mean("exposures-at-win", "exposures", "Mean number of the winner's exposures.")
            .headed("winner's exposures"));
    picks.add(
        Pick.mean("points-when-won", "points a win", "What the winner received on average.")
            .headed("points a win")
            .shownTo(0));
  }

  /** The sum of a count for each way of playing. */
  static Map<String, Double> sums(String name, List<Sheet.Row> rows) {
    Map<String, Double> sums = new TreeMap<>();
    rows.forEach(row -> sums.merge(row.text("arm"), row.number(name).orElse(0), Double::sum));
    return sums;
  }

  private String explained() {
    return "A player aims at one line at a time, as it says itself; the range in brackets would hold the true figure in %s of 100 such runs."
        .formatted(Wording.level(results.confidence()));
  }
}
