package org.tallywall.reports.figure;

/**
 * What is measured along a side of a figure.
 *
 * @param name what it is, such as "wins"
 * @param unit in what it is counted, such as "in 100 games"; empty if there is no unit
 */
public record Axis(String name, String unit) {
  /**
   * Takes the words.
   *
   * @param name what it is
   * @param unit in what it is counted, or empty
   * @throws IllegalArgumentException if the name is missing
   */
  public Axis {
    Demand.words("an axis", "a name", name);
    unit = unit == null ? "" : unit;
  }

  /**
   * The words that stand at the axis.
   *
   * @return such as "wins (in 100 games)"
   */
  public String words() {
    return unit.isBlank() ? name : name + " (" + unit + ")";
  }
}
