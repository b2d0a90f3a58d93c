package org.tallywall.reports.words;

import java.util.Map;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.BranchColumns;

/**
 * The two choices that a branch study compares, in words. The file has the second less the first;
 * readers are told the first less the second, in the order of the study.
 *
 * @param first the choice that situations speak of, as the file names it
 * @param second the choice beside it
 */
public record BranchWords(String first, String second) {
  private static final String CLAIM_OF_PLAYERS =
      " What counts is the first discard of a game that fits one of these situations and would bring"
          + " the hand closer if claimed.";

  private static final String CLAIM =
      CLAIM_OF_PLAYERS + " The claim is the one that brings it closest, with the fewest jokers.";

  private static final String DISCARD =
      " The safest tile is thrown whatever it costs the player\u2019s own hand; where both choices"
          + " throw the same tile the difference is 0 and counts as such.";

  private static final String ANY =
      " Looked at is the first discard of a game that fits one of these situations.";

  private static final String PASS =
      " Looked at is the first pass of a game that fits one of these situations; only the tiles of"
          + " that pass are chosen differently.";

  private static final String STOP =
      " Looked at is the answer to the question whether to stop the passes; where another player"
          + " stops them anyway the difference is 0 and counts as such.";

  private static final String PLAYERS =
      " What is chosen there is what the player of that name would choose; where both choose the same"
          + " the difference is 0 and counts as such.";

  /**
   * The choices of a row.
   *
   * @param row a row of the file
   * @return the words
   */
  public static BranchWords of(CsvFile.Row row) {
    return new BranchWords(row.text(BranchColumns.COMPARED_WITH), row.text(BranchColumns.OPTION));
  }

  /**
   * What is done, as in "throw the safest tile".
   *
   * @param option the choice as files name it
   * @return the words
   */
  public static String plain(String option) {
    return OptionWords.of(option).map(OptionWords::plain).orElse(Wording.quoted(option));
  }

  /** The same as a subject, as in "throwing the safest tile". */
  private static String doing(String option) {
    return OptionWords.of(option).map(OptionWords::doing).orElse(Wording.quoted(option));
  }

  /**
   * Which is asked about.
   *
   * @return the words
   */
  public String question() {
    return sentence(plain(first)) + ", or " + plain(second) + "?";
  }

  /**
   * What a number of a situation is the worth of.
   *
   * @return the words
   */
  public String instead() {
    return doing(first) + " instead of " + doing(second);
  }

  /**
   * What stands at both sides of a border.
   *
   * @param firstLeft whether the first choice stands at the left
   * @return the words
   */
  public String border(boolean firstLeft) {
    return "the rule to remember: left of this line %s, right of it %s"
        .formatted(plain(firstLeft ? first : second), plain(firstLeft ? second : first));
  }

  /**
   * The words with a capital letter.
   *
   * @param words the words
   * @return the words
   */
  public static String sentence(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /**
   * What counts as a decision, where that is not plain from the choices.
   *
   * @param results what a results folder holds
   * @return the words
   */
  public static String moment(Results results) {
    Map<String, Object> branch = results.study().object("branch");
    boolean players = branch.get("options") instanceof Map<?, ?>;
    String decision =
        switch (String.valueOf(branch.get("at"))) {
          case "claim" -> players ? CLAIM_OF_PLAYERS : CLAIM;
          case "pass" -> PASS;
          case "stop" -> STOP;
          default -> players ? ANY : DISCARD;
        };
    return players ? decision + PLAYERS : decision;
  }

  /**
   * 1 or −1 where the range leaves out 0 and stays clear with all situations counted, else 0.
   *
   * @param row a row of the file
   * @param confidence the level of ranges, between 0 and 1
   * @return 1, -1, or 0 where it cannot be told
   */
  public static int clear(CsvFile.Row row, double confidence) {
    OptionalDouble holm = row.number(BranchColumns.P_HOLM);
    boolean clear = holm.isPresent() && holm.getAsDouble() < 1 - confidence;
    return clear
        ? row.ranged(BranchColumns.DIFFERENCE).map(r -> r.estimate().clearSign()).orElse(0)
        : 0;
  }
}
