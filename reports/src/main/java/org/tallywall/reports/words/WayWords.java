package org.tallywall.reports.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.WayColumns;

/** Who the ways of playing are: a sentence for each, made from {@code ways.csv}. */
public final class WayWords {
  /** So many settings fit into a sentence. */
  private static final int SPELLED = 4;

  private final Results results;
  private final List<CsvFile.Row> rows;

  private WayWords(Results results) {
    this.results = results;
    this.rows = results.rows(WayColumns.FILE);
  }

  /**
   * A sentence for each way of playing; of a sweep one that says what is set.
   *
   * @param results what a results folder holds
   * @return the sentences; none where no way differs
   */
  public static List<String> sentences(Results results) {
    WayWords words = new WayWords(results);
    if (words.rows.isEmpty()) {
      return List.of();
    }
    return words.isSweep() ? List.of(words.setting()) : words.sentences();
  }

  /** The value of a swept setting in words; empty where the folder has none. */
  static Optional<String> label(Results results, String arm) {
    List<CsvFile.Row> rows = results.rows(WayColumns.FILE);
    return rows.stream()
        .filter(row -> row.text(WayColumns.ARM).equals(arm))
        .map(row -> row.text(WayColumns.LABEL))
        .filter(label -> !label.isBlank())
        .findFirst()
        .or(
            () ->
                rows.stream()
                    .filter(row -> row.text(WayColumns.BASELINE).equals(arm))
                    .map(row -> row.text(WayColumns.BASELINE_LABEL))
                    .filter(label -> !label.isBlank())
                    .findFirst());
  }

  /** What a swept setting does, in short; empty where the folder has no words. */
  static Optional<String> heading(Results results) {
    return results.rows(WayColumns.FILE).stream()
        .map(row -> row.text(WayColumns.HEADING))
        .filter(words -> !words.isEmpty())
        .findFirst();
  }

  private boolean isSweep() {
    return results.study().has("sweep");
  }

  private String setting() {
    CsvFile.Row row = rows.get(0);
    return "The ways of playing are %s with one setting (%s) at different values: a player that %s."
        .formatted(
            row.text(WayColumns.PLAYER), row.text(WayColumns.SETTING), row.text(WayColumns.SAYING));
  }

  private List<String> sentences() {
    Map<String, List<CsvFile.Row>> ways = new LinkedHashMap<>();
    for (CsvFile.Row row : rows) {
      ways.computeIfAbsent(row.text(WayColumns.ARM), arm -> new ArrayList<>()).add(row);
    }
    List<String> sentences = new ArrayList<>();
    rows.stream()
        .filter(WayWords::isKind)
        .findFirst()
        .map(this::baseline)
        .ifPresent(sentences::add);
    ways.values().forEach(way -> sentences.add(sentence(way)));
    return sentences;
  }

  /** Who the others are compared with, where that is a player of another kind. */
  private String baseline(CsvFile.Row row) {
    return player(
        row.text(WayColumns.BASELINE),
        row.text(WayColumns.BASELINE_VALUE),
        row.text(WayColumns.BASELINE_WORDS));
  }

  private static String player(String way, String player, String description) {
    return "%s is the player %s: %s.".formatted(Wording.quoted(way), player, description);
  }

  private static String sentence(List<CsvFile.Row> way) {
    CsvFile.Row first = way.get(0);
    String arm = first.text(WayColumns.ARM);
    String unlike = "unlike " + Wording.quoted(first.text(WayColumns.BASELINE)) + ", ";
    long settings = first.count(WayColumns.SETTINGS);
    String listed = " in %s settings, listed at the end of the report".formatted(settings);
    if (isKind(first)) {
      String who = player(arm, first.text(WayColumns.VALUE), first.text(WayColumns.WORDS));
      String differs = "differs from " + Wording.quoted(first.text(WayColumns.BASELINE)) + listed;
      return settings == 0
          ? who
          : who + (settings > SPELLED ? " It " + differs : " It, " + unlike + spelled(way)) + ".";
    }
    String player = Wording.quoted(arm) + " is " + article(first.text(WayColumns.PLAYER)) + " that";
    return settings > SPELLED
        ? "%s differs from %s%s."
            .formatted(player, Wording.quoted(first.text(WayColumns.BASELINE)), listed)
        : player + ", " + unlike + spelled(way) + ".";
  }

  private static boolean isKind(CsvFile.Row row) {
    return row.text(WayColumns.SETTING).isEmpty();
  }

  private static String article(String player) {
    return player.contains(":")
        ? "the player " + player
        : ("aeiou".indexOf(player.charAt(0)) < 0 ? "a " : "an ") + player;
  }

  private static String spelled(List<CsvFile.Row> way) {
    List<String> parts = new ArrayList<>();
    for (CsvFile.Row row : way) {
      String words = row.text(WayColumns.WORDS);
      if (!isKind(row) && !words.isEmpty()) {
        parts.add(words + instead(row));
      }
    }
    return String.join("; ", parts);
  }

  /** The other's number, where it does something there. */
  private static String instead(CsvFile.Row row) {
    String there = row.text(WayColumns.BASELINE_VALUE);
    boolean number = there.matches("-?[0-9.]+");
    return number && !row.text(WayColumns.BASELINE_WORDS).isEmpty()
        ? " (instead of " + there + ")"
        : "";
  }
}
