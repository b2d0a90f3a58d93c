package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
          "event":"discard" | "event":"discards" | nearest known one is "discard"
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

  @Test
  void fileThatBreaksOff_isRefusedAtItsLine(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("games.jsonl");
    Files.writeString(file, GOOD + "\n" + GOOD.substring(0, 900));
    try (RecordFile records = RecordFile.open(file)) {
      assertThat(records.next()).isNotNull();
      FaultyFileException refused = catchThrowableOfType(FaultyFileException.class, records::next);
      assertThat(refused.getMessage() + refused.faults()).contains("games.jsonl");
    }
  }

  @Test
  void fileThatIsNotThere_isAnIoException(@TempDir Path folder) {
    assertThatThrownBy(() -> RecordFile.open(folder.resolve("none.jsonl")))
        .isInstanceOf(IOException.class);
  }
}
