package org.tallywall.core.card;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.TextFile;

/**
 * Reads card files: JSON, or CSV as spreadsheets save it. All faults of a file come out at once.
 */
public final class CardFile {
  private CardFile() {}

  /**
   * Reads a card file; a name that ends in {@code .csv} is read as a spreadsheet.
   *
   * @param file the file
   * @return the card with its warnings, or all its faults
   */
  public static CardReading read(Path file) {
    String text;
    try {
      text = TextFile.read(file, "save it as CSV (UTF-8)");
    } catch (FaultyFileException unreadable) {
      return new CardReading(
          file.toString(), null, unreadable.faults(), List.of(), unreadable.faults().size());
    }
    String name = file.getFileName().toString();
    return name.toLowerCase(Locale.ROOT).endsWith(".csv")
        ? csv(file.toString(), name.substring(0, name.length() - 4), text)
        : json(file.toString(), text);
  }

  /**
   * Reads a card from JSON.
   *
   * @param file the file's name for messages
   * @param text its text
   * @return the card with its warnings, or all its faults
   */
  public static CardReading json(String file, String text) {
    Faults faults = new Faults();
    return finish(file, new JsonCardReader(faults).read(text), faults);
  }

  /**
   * Reads a card from a spreadsheet's CSV.
   *
   * @param file the file's name for messages
   * @param card what the card is called
   * @param text the file's text
   * @return the card with its warnings, or all its faults
   */
  public static CardReading csv(String file, String card, String text) {
    Faults faults = new Faults();
    return finish(file, new CsvCardReader(faults).read(card, text), faults);
  }

  private static CardReading finish(String file, CardDraft draft, Faults faults) {
    Card card = draft == null ? null : CardMaker.make(draft, faults);
    List<Fault> found = faults.faults();
    return new CardReading(
        file, found.isEmpty() ? card : null, found, faults.warnings(), faults.count());
  }
}
