package org.tallywall.reports.words;

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
  private static final String CLAIM =
      " What counts is the first discard of a game that fits one of these situations and would bring"
          + " the hand closer if claimed; the claim is the one that brings it closest, with the fewest"
          + " jokers.";

  private static final String DISCARD =
      " The safest tile is thrown whatever it costs the player\u2019s own hand; where both choices"
          + " throw the same tile the difference is 0 and counts as such.";

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
    return OptionWords.of(option).map(OptionWords::plain).orElse(option);
  }

  /** The same as a subject, as in "throwing the safest tile". */
  private static String doing(String option) {
    return OptionWords.of(option).map(OptionWords::doing).orElse(option);
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
    return "claim".equals(results.study().object("branch").get("at")) ? CLAIM : DISCARD;
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
