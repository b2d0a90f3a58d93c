package org.tallywall.reports.csv;

import java.util.regex.Pattern;
import org.tallywall.reports.table.Visible;

/**
 * The one form of a text in a cell of a comma-separated file, and the way back. A line break within
 * a text and every letter that nobody sees are written as {@link Visible} does, so that a row is
 * always one line. A text that a spreadsheet would take for a formula gets an apostrophe in front,
 * and so does one that looks as if it had one already; numbers are no formulas.
 */
public final class CsvCell {
  private static final Pattern FORMULA = Pattern.compile("'*[-=+@\t\r].*", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("'*[-+]?[0-9]+(\\.[0-9]+)?");

  private CsvCell() {}

  /**
   * A text as a file has it, before it is quoted.
   *
   * @param text any text
   * @return the text, harmless; the same text for all that people usually write
   */
  public static String written(String text) {
    String line = Visible.line(text);
    return isFormula(line) ? "'" + line : line;
  }

  /**
   * The text that {@link #written} was given.
   *
   * @param written a cell of a file, without its quotation marks
   * @return the text
   */
  public static String read(String written) {
    boolean guarded = written.startsWith("'") && isFormula(written.substring(1));
    return Visible.back(guarded ? written.substring(1) : written);
  }

  private static boolean isFormula(String line) {
    return FORMULA.matcher(line).matches() && !NUMBER.matcher(line).matches();
  }
}
