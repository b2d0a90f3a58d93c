package org.tallywall.reports.table;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a column may hold, by which a file is judged that somebody else may have changed. Ranges are
 * generous: they keep out what cannot be, not what is unlikely.
 *
 * @param type the type of its cells
 * @param least the smallest number, of an interval the smallest estimate
 * @param most the largest number, of an interval the largest estimate
 * @param filled whether every row has to have something there
 * @param words the only words that may stand there; none where any may
 */
public record Values(
    ColumnType type, double least, double most, boolean filled, List<String> words) {
  /** No number of any table is further from 0 than this. */
  public static final double FURTHEST = 1e15;

  private static final Pattern NUMBER =
      Pattern.compile("[-+]?[0-9]+(\\.[0-9]+)?([eE][-+]?[0-9]{1,4})?");

  /**
   * Copies the words.
   *
   * @param type the type of its cells
   * @param least the smallest number
   * @param most the largest number
   * @param filled whether every row has to have something there
   * @param words the only words that may stand there
   */
  public Values {
    Objects.requireNonNull(type, "type");
    words = List.copyOf(words);
  }

  /**
   * All that a type allows: shares from 0 to 1, counts from 0, other numbers up to {@link
   * #FURTHEST}.
   *
   * @param type the type
   * @return its values
   */
  public static Values of(ColumnType type) {
    double least = type == ColumnType.INTEGER || type.isRate() ? 0 : -FURTHEST;
    return new Values(type, least, type.isRate() ? 1 : FURTHEST, false, List.of());
  }

  /**
   * The same within other limits.
   *
   * @param low the smallest number
   * @param high the largest number
   * @return the values
   */
  Values within(double low, double high) {
    return new Values(type, low, high, filled, words);
  }

  /** The same with something in every row. */
  Values everywhere() {
    return new Values(type, least, most, true, words);
  }

  /** The same with these words alone. */
  Values only(List<String> these) {
    return new Values(type, least, most, filled, these);
  }

  /** The same of the cells of another type. */
  Values as(ColumnType other) {
    return new Values(other, least, most, filled, words);
  }

  /**
   * Judges what a file has in a cell.
   *
   * @param text the text of the cell
   * @return what is wrong with it, as in {@code "x" is no number}; empty if nothing is
   */
  public Optional<String> wrong(String text) {
    if (text.isBlank()) {
      return filled
          ? Optional.of("nothing stands there")
          : text.isEmpty() || !type.isNumber() ? Optional.empty() : Optional.of(noNumber(text));
    }
    return type.isNumber() ? wrongNumber(text) : wrongWord(text);
  }

  private Optional<String> wrongWord(String text) {
    return words.isEmpty() || words.contains(text)
        ? Optional.empty()
        : Optional.of(
            "expected \""
                + String.join("\" or \"", words)
                + "\", got \""
                + Visible.inShort(text)
                + "\"");
  }

  private Optional<String> wrongNumber(String text) {
    if (!isNumber(text)) {
      return Optional.of(noNumber(text));
    }
    double number = Double.parseDouble(text);
    if (type == ColumnType.INTEGER && (number != Math.rint(number) || number < 0)) {
      return Optional.of(Visible.inShort(text) + " is no count");
    }
    return number >= least && number <= most
        ? Optional.empty()
        : Optional.of(
            "%s is out of range; expected is %s from %s to %s"
                .formatted(
                    Visible.inShort(text),
                    type == ColumnType.INTEGER ? "a whole number" : "a number",
                    NumberText.of(least),
                    NumberText.of(most)));
  }

  private static String noNumber(String text) {
    return "\"" + Visible.inShort(text) + "\" is no number";
  }

  /**
   * Whether a text is a finite number in plain digits.
   *
   * @param text the text
   * @return true if it is
   */
  public static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches() && Double.isFinite(Double.parseDouble(text));
  }
}
