package org.tallywall.strategies.habit;

import java.math.BigDecimal;
import java.util.List;

/**
 * A setting of a player: one thing that teachers argue about.
 *
 * @param name its name in a study, parts separated by dots, as in {@code claims.not-before-wall}
 * @param standard its default: a {@link Boolean}, {@link BigDecimal} or {@link String}
 * @param least smallest number, where it is a number
 * @param most largest number, where it is a number
 * @param words the words it may be, where it is a word
 * @param meaning what it does, with the saying that it expresses
 */
public record Setting(
    String name,
    Object standard,
    BigDecimal least,
    BigDecimal most,
    List<String> words,
    String meaning) {
  /**
   * A setting.
   *
   * @param name its name
   * @param standard its default
   * @param least smallest number
   * @param most largest number
   * @param words the words it may be
   * @param meaning what it does
   */
  public Setting {
    words = List.copyOf(words);
  }

  /**
   * A setting that is on or off.
   *
   * @param name its name
   * @param standard its default
   * @param meaning what it does when on
   * @return the setting
   */
  public static Setting flag(String name, boolean standard, String meaning) {
    return new Setting(name, standard, BigDecimal.ZERO, BigDecimal.ZERO, List.of(), meaning);
  }

  /**
   * A setting that is a number; whole if its default and bounds are.
   *
   * @param name its name
   * @param standard its default
   * @param least smallest value
   * @param most largest value
   * @param meaning what it does
   * @return the setting
   */
  public static Setting number(
      String name, String standard, String least, String most, String meaning) {
    return new Setting(
        name,
        new BigDecimal(standard),
        new BigDecimal(least),
        new BigDecimal(most),
        List.of(),
        meaning);
  }

  /**
   * A setting that is one of several words; the first is the default.
   *
   * @param name its name
   * @param meaning what it does
   * @param words the words
   * @return the setting
   */
  public static Setting word(String name, String meaning, String... words) {
    return new Setting(name, words[0], BigDecimal.ZERO, BigDecimal.ZERO, List.of(words), meaning);
  }

  /**
   * The same setting with another default.
   *
   * @param value the default
   * @return the setting
   */
  public Setting withStandard(Object value) {
    return new Setting(name, value, least, most, words, meaning);
  }

  /**
   * Whether numbers with a fraction are allowed.
   *
   * @return false where it is a whole number, or no number
   */
  public boolean takesFractions() {
    return least.scale() > 0 || most.scale() > 0;
  }

  /**
   * A number without needless zeros, so that 1, 1.0 and 10e-1 are one value.
   *
   * @param number any number
   * @return the same number, its scale 0 or more
   */
  public static BigDecimal plain(BigDecimal number) {
    BigDecimal few = number.stripTrailingZeros();
    return few.scale() < 0 ? few.setScale(0) : few;
  }

  /**
   * Whether it may be set to a value.
   *
   * @param value as read from a study
   * @return true if the value is of its kind and in its range
   */
  public boolean allows(Object value) {
    if (standard instanceof BigDecimal && value instanceof BigDecimal number) {
      boolean whole = number.stripTrailingZeros().scale() <= 0;
      return number.compareTo(least) >= 0
          && number.compareTo(most) <= 0
          && (whole || takesFractions());
    }
    return standard instanceof Boolean ? value instanceof Boolean : words.contains(value);
  }

  /**
   * What it may be, in words.
   *
   * @return as in "a whole number from 1 to 4" or "on or off (true or false)"
   */
  public String range() {
    if (standard instanceof Boolean) {
      return "true or false";
    }
    if (standard instanceof BigDecimal) {
      return (takesFractions() ? "a number from " : "a whole number from ")
          + least.toPlainString()
          + " to "
          + most.toPlainString();
    }
    return "one of " + String.join(", ", words);
  }
}
