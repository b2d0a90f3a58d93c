package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.AbstractThrowableAssert;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.FaultyFileException;

/** Sheets for tests, on a small invented card. */
final class Sheets {
  static final TableSetup TABLE =
      new TableSetup(
          new ConcreteHands(
              CardFile.json(
                      "ferry.json",
                      """
                      { "card": "Ferry Landing test card", "families": [ { "family": "All", "lines": [
                        { "id": "A1", "tiles": "222x 66y 8888y 666z FF", "value": 25 },
                        { "id": "A2", "tiles": "NNNN SSS 11x 55x 999x", "value": 25 },
                        { "id": "A3", "tiles": "RRR GGGG 000 99x 99y", "value": 30 },
                        { "id": "A4", "tiles": "22x 444y 666y 88x FFFF", "value": 35,
                          "concealed": true } ] } ] }
                      """)
                  .orThrow()),
          TableRules.STANDARD);

  /** A turn in which everything is right; the tests spoil one line of it. */
  static final String TURN =
      """
      seat 0
      moment turn drew S
      wall 95
      rack 222b 66c 888c 66d FF E S
      discards 1b 2c 3d 4d
      exposed 2 NNNJ
      """;

  private Sheets() {}

  static PositionSheet read(String text) {
    return PositionSheet.of("harbour.txt", text, TABLE);
  }

  /** The turn with one line replaced by others; an empty line takes it out. */
  static String turnWith(String name, String... lines) {
    List<String> all = new ArrayList<>();
    for (String line : TURN.split("\n")) {
      if (line.startsWith(name)) {
        all.addAll(Arrays.asList(lines));
      } else {
        all.add(line);
      }
    }
    return String.join("\n", all);
  }

  static AbstractThrowableAssert<?, ?> assertFaulty(String text) {
    return assertThatThrownBy(() -> read(text)).isInstanceOf(FaultyFileException.class);
  }
}
