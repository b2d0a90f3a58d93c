package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.text.FaultyFileException;

/** Lines that are no records: what is said about them. */
class RecordReaderTest {
  private static final String GOOD = good();

  private static String good() {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "77d J 4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(0).discard("7d");
    game.seat(1).claim("7d", ClaimChoice.expose(4, 1)).discard("4c");
    game.seat(2)
        .claim("4c", ClaimChoice.expose(4, 0))
        .turn(TurnChoice.exchange(1, 0), TurnChoice.mahjong());
    game.run();
    return RecordJson.line(game.record());
  }

  @Test
  void goodLine_isRead() {
    assertThat(RecordJson.line(RecordReader.read("line 1", GOOD))).isEqualTo(GOOD);
  }

  /** A piece of the good line, what stands in its place, and what is said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          tallywall.game/1 | tallywall.game/9 | the format is not tallywall.game/1
          "seed":"7" | "seed":"seven" | the seed is a whole number in quotes
          "event":"discard" | "event":"discards" | did you mean "discard"?
          "size":4 | "size":7 | size
          "jokers":1 | "jokers":"one" | jokers
          "seat":0,"tile" | "seat":4,"tile" | seat
          "tile":"7d"} | "tile":"7x"} | 7x
          "owner":1 | "owned":1 | owned
          "by":"exchange"}], | "buy":"exchange"}], | buy
          "dice":[3,4] | "dice":[3,"four"] | holds whole numbers only
          "wall":99 | "wall":"99" | wall
          "line":"T1", | | line
          "points":[-50, | "points":["-50", | points
          "value":25 | "value":0 | value
          "value":25 | "value":4294967321 | "value" is a whole number from 1 to 1000000
          "value":25 | "value":1e9999999999 | the number is too large
          "seat":0,"tile" | "seat":4294967296,"tile" | "seat" is a whole number from 0 to 3
          "wall":99 | "wall":4294967395 | "wall" is a whole number from 0 to 200
          "points":[-50, | "points":[4294967246, | holds whole numbers only
          "hand":[" | "hand":[5," | holds texts in double quotes only
          "rules":{ | "rules":[], "arm":{ | "rules" is an object in braces
          "players":[ | "players":[null, | holds names and objects in braces only
          "line":"T1" | "line":"\ud800" | holds half a character
          """)
  void faultyLine_isRefusedWithItsFault(String good, String bad, String said) {
    String line = GOOD.replaceFirst(java.util.regex.Pattern.quote(good), bad == null ? "" : bad);
    assertThat(line).isNotEqualTo(GOOD);
    FaultyFileException refused =
        catchThrowableOfType(FaultyFileException.class, () -> RecordReader.read("line 5", line));
    assertThat(refused.faults()).isNotEmpty();
    assertThat(refused.faults().toString()).contains(said);
  }

  @ParameterizedTest
  @CsvSource({"format", "seed", "deal", "card", "players", "events", "end"})
  void lineWithoutAField_isRefused(String field) {
    int at = GOOD.lastIndexOf("\"" + field + "\":");
    String line = GOOD.substring(0, at) + "\"no-" + GOOD.substring(at + 1);
    assertThatThrownBy(() -> RecordReader.read("line 5", line))
        .isInstanceOf(FaultyFileException.class);
  }

  @ParameterizedTest
  @CsvSource({"''", "{", "[]", "7", "null"})
  void lineThatIsNoObject_isRefused(String line) {
    assertThatThrownBy(() -> RecordReader.read("line 5", line))
        .isInstanceOf(FaultyFileException.class);
  }
}
