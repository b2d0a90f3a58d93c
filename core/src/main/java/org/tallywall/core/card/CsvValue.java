package org.tallywall.core.card;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Shown;

/**
 * Reads what a line of a card in CSV pays.
 *
 * @param columns the columns
 * @param faults takes the faults
 */
record CsvValue(CsvColumns columns, Faults faults) {
  /** A number whose last sign looks like a zero. */
  private static final Pattern LETTER_O = Pattern.compile("\\$? ?[0-9]+[oO]");

  /** A whole number, also as a cell for money shows it. */
  private static final Pattern VALUE = Pattern.compile("\\$? ?([0-9]{1,9})(?:[.,]0{1,2})? ?¢?");

  /**
   * The value of a line.
   *
   * @param row its row
   * @param draft the line
   * @return its points; 1 where they have a fault
   */
  long of(List<Typed> row, LineDraft draft) {
    Typed cell = columns.cell(row, "value");
    if (cell == null) {
      faults.fault(
          draft.place, draft.id, "this line has no value (points); write a number, as in 25");
      return 1;
    }
    String text = cell.text().strip();
    Matcher money = VALUE.matcher(text);
    long value = money.matches() ? Long.parseLong(money.group(1)) : 0;
    if (value < 1 || value > CardLimits.MOST_VALUE) {
      faults.fault(
          cell.place(),
          draft.id,
          String.format(
              Locale.ROOT,
              "\"%s\" is a whole number from 1 to %d, not \"%s\"%s",
              columns.written("value"),
              CardLimits.MOST_VALUE,
              Shown.word(text),
              LETTER_O.matcher(text).matches() ? "; is the last sign the letter O? write 0" : ""));
      return 1;
    }
    return value;
  }
}
