package org.tallywall.reports.table;

import java.util.List;
import java.util.Objects;

/**
 * What a column is called, measures and means.
 *
 * @param name the name in files: small letters, digits and single hyphens, as in {@code win-rate}
 * @param heading the name that people read
 * @param unit the unit of the numbers as a file holds them, such as "points per game"
 * @param meaning one sentence that explains the column to a stranger
 * @param values what its cells may hold
 * @param places decimal places, 0 to 15, of numbers that people read and that have no interval to
 *     tell the places; of a share, the places of its percentage
 */
public record Column(
    String name, String heading, String unit, String meaning, Values values, int places) {

  private static final int MOST_PLACES = 15;

  /**
   * Takes all that a column is; the factories need less.
   *
   * @param name the name in files
   * @param heading the name that people read
   * @param unit the unit
   * @param meaning one sentence that explains it
   * @param values what its cells may hold
   * @param places decimal places shown to people
   * @throws IllegalArgumentException if the name has another form, words are missing, or the places
   *     are out of range
   */
  public Column {
    Names.check("a column's name", name);
    requireWords(name, "a heading", heading);
    requireWords(name, "a unit", unit);
    requireWords(name, "a meaning", meaning);
    Objects.requireNonNull(values, "values");
    if (places < 0 || places > MOST_PLACES) {
      throw new IllegalArgumentException(
          "column " + name + ": decimal places go from 0 to " + MOST_PLACES + ", not " + places);
    }
  }

  /**
   * Makes a column of words.
   *
   * @param name the name in files
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column text(String name, String meaning) {
    return of(name, "text", meaning, ColumnType.TEXT);
  }

  /**
   * Makes a column of counts.
   *
   * @param name the name in files
   * @param unit what is counted
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column integer(String name, String unit, String meaning) {
    return of(name, unit, meaning, ColumnType.INTEGER);
  }

  /**
   * Makes a column of numbers, shown to people with two decimal places.
   *
   * @param name the name in files
   * @param unit the unit
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column decimal(String name, String unit, String meaning) {
    return of(name, unit, meaning, ColumnType.DECIMAL);
  }

  /**
   * Makes a column of shares from 0 to 1, shown to people as percentages with one decimal place.
   *
   * @param name the name in files
   * @param unit of what it is a share, such as "share of games"
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column rate(String name, String unit, String meaning) {
    return of(name, unit, meaning, ColumnType.RATE);
  }

  /**
   * Makes a column of numbers with intervals.
   *
   * @param name the name in files; the limits are added as {@code name-low} and {@code name-high}
   * @param unit the unit
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column decimalInterval(String name, String unit, String meaning) {
    return of(name, unit, meaning, ColumnType.DECIMAL_INTERVAL);
  }

  /**
   * Makes a column of shares from 0 to 1 with intervals.
   *
   * @param name the name in files; the limits are added as {@code name-low} and {@code name-high}
   * @param unit of what it is a share, such as "share of games"
   * @param meaning one sentence that explains it
   * @return the column, headed by its name
   */
  public static Column rateInterval(String name, String unit, String meaning) {
    return of(name, unit, meaning, ColumnType.RATE_INTERVAL);
  }

  /**
   * The same column under another heading.
   *
   * @param words the name that people read
   * @return the column
   */
  public Column headed(String words) {
    return new Column(name, words, unit, meaning, values, places);
  }

  /**
   * The same column, shown to people with other decimal places.
   *
   * @param decimalPlaces 0 to 15
   * @return the column
   */
  public Column shownTo(int decimalPlaces) {
    return new Column(name, heading, unit, meaning, values, decimalPlaces);
  }

  /**
   * The same column, whose numbers have other limits.
   *
   * @param least the smallest number, of an interval the smallest estimate
   * @param most the largest number, of an interval the largest estimate
   * @return the column
   */
  public Column within(double least, double most) {
    return with(values.within(least, most));
  }

  /**
   * The same column, where something stands in every row.
   *
   * @return the column
   */
  public Column filled() {
    return with(values.everywhere());
  }

  /**
   * The same column, where certain words alone may stand.
   *
   * @param words the words; an empty cell fits besides
   * @return the column
   */
  public Column oneOf(String... words) {
    return with(values.only(List.of(words)));
  }

  private Column with(Values others) {
    return new Column(name, heading, unit, meaning, others, places);
  }

  /**
   * What the cells hold.
   *
   * @return their type
   */
  public ColumnType type() {
    return values.type();
  }

  /**
   * The column as a file for machines has it: one value a column.
   *
   * @return three columns if the cells have intervals (estimate, lower limit, upper limit), else
   *     this one
   */
  public List<Column> spread() {
    if (!type().hasInterval()) {
      return List.of(this);
    }
    Values plain = values.as(type().isRate() ? ColumnType.RATE : ColumnType.DECIMAL);
    return List.of(
        new Column(name, heading, unit, meaning, plain, places),
        limit("low", "Lower limit of the interval around " + name + "."),
        limit("high", "Upper limit of the interval around " + name + "."));
  }

  private Column limit(String end, String limitMeaning) {
    Values any = Values.of(ColumnType.DECIMAL);
    return new Column(name + "-" + end, heading + ", " + end, unit, limitMeaning, any, places);
  }

  private static Column of(String name, String unit, String meaning, ColumnType type) {
    Names.check("a column's name", name);
    String heading = name.replace('-', ' ');
    return new Column(name, heading, unit, meaning, Values.of(type), usualPlaces(type));
  }

  private static int usualPlaces(ColumnType type) {
    if (type == ColumnType.TEXT || type == ColumnType.INTEGER) {
      return 0;
    }
    return type.isRate() ? 1 : 2;
  }

  private static void requireWords(String name, String what, String words) {
    if (words == null || words.isBlank()) {
      throw new IllegalArgumentException("column " + name + " lacks " + what);
    }
  }
}
