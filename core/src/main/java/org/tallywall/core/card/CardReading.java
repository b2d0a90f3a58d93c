package org.tallywall.core.card;

import java.util.List;
import org.tallywall.core.text.Fault;
import org.tallywall.core.text.FaultyFileException;

/**
 * What came of reading a card file.
 *
 * @param file the file's name as the user wrote it
 * @param card the card, or null where there are faults
 * @param faults what is wrong, from top to bottom; empty for a good card; of very many the first,
 *     and one more that says how many are left out
 * @param warnings what looks odd, in the same way; a card with warnings only is good
 * @param faultCount how many faults there are, those left out among them
 */
public record CardReading(
    String file, Card card, List<Fault> faults, List<Fault> warnings, int faultCount) {
  /**
   * What came of reading.
   *
   * @param file the file's name
   * @param card the card or null
   * @param faults what is wrong
   * @param warnings what looks odd
   * @param faultCount how many faults there are
   */
  public CardReading {
    faults = List.copyOf(faults);
    warnings = List.copyOf(warnings);
  }

  /**
   * The card, if it is good.
   *
   * @return the card
   * @throws FaultyFileException with every fault, if it is not
   */
  public Card orThrow() {
    if (!faults.isEmpty()) {
      throw new FaultyFileException(file, faults);
    }
    return card;
  }
}
