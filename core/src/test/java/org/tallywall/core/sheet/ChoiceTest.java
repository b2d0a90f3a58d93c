package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Faults;
import org.tallywall.core.tile.TileText;

/** Choices are compared as far as they are written. */
class ChoiceTest {
  private static int tile(String symbol) {
    return TileText.tile(symbol);
  }

  private static List<Move> answer(String name) {
    return switch (name) {
      case "pass 1d N R" -> pass(0, "1d", "N", "R");
      case "pass N N R" -> pass(0, "N", "N", "R");
      case "pass W G blind 1" -> pass(1, "G", "W");
      case "blind 3" -> pass(3);
      case "stop" -> List.of(new Move.Stop(true));
      case "go on" -> List.of(new Move.Stop(false));
      case "courtesy 1" -> List.of(new Move.Courtesy(1));
      case "nothing" -> List.of(new Move.Nothing());
      case "claim 4 1, E" -> List.of(new Move.Claim(4, 1), new Move.Discard(tile("E")));
      case "mahjong" -> List.of(new Move.Mahjong());
      case "8c, E" -> List.of(new Move.Exchange(tile("8c"), 2), new Move.Discard(tile("E")));
      default -> List.of(new Move.Discard(tile(name)));
    };
  }

  private static List<Move> pass(int blind, String... tiles) {
    return List.of(
        new Move.Pass(java.util.Arrays.stream(tiles).map(ChoiceTest::tile).toList(), blind));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          pass R 1d N           | pass 1d N R      | true
          pass 1d N N           | pass 1d N R      | false
          pass N R N            | pass N N R       | true
          pass 1d N R           | pass N N R       | false
          pass W G blind 1      | pass W G blind 1 | true
          pass W G R            | pass W G blind 1 | false
          pass blind 3          | blind 3          | true
          pass with any 3b N    | pass 1d N R      | true
          pass with any 3b 5b   | pass 1d N R      | false
          stop                  | stop             | true
          stop                  | go on            | false
          go on                 | go on            | true
          courtesy 1            | courtesy 1       | true
          courtesy 2            | courtesy 1       | false
          nothing               | nothing          | true
          nothing               | mahjong          | false
          claim 4 jokers 1      | claim 4 1, E     | true
          claim 4 jokers 2      | claim 4 1, E     | false
          claim 4               | claim 4 1, E     | true
          claim 3               | claim 4 1, E     | false
          claim *               | claim 4 1, E     | true
          claim *               | mahjong          | false
          claim * then discard E| claim 4 1, E     | true
          claim * then discard 8c | claim 4 1, E   | false
          mahjong               | mahjong          | true
          exchange 8c seat 2    | 8c, E            | true
          exchange 8c seat 1    | 8c, E            | false
          exchange 8c           | 8c, E            | true
          exchange *            | 8c, E            | true
          exchange 8c seat 2 then discard * | 8c, E | true
          exchange 8c then mahjong | 8c, E         | false
          discard *             | 8c, E            | false
          discard *             | 7d               | true
          discard 7d            | 7d               | true
          discard any 2c 8d     | 8d               | true
          discard any 28c 9d    | 8d               | false
          throw 7d              | 7d               | true
          Throw any 2c 8d       | 8d               | true
          call 4 jokers 1 then throw E | claim 4 1, E | true
          call 3                | claim 4 1, E     | false
          redeem 8c seat 2 then throw E | 8c, E    | true
          """)
  void choice_matches(String choice, String answer, boolean matches) {
    Faults faults = new Faults();
    ChoiceReader.Written written =
        ChoiceReader.read(SheetLine.of("expect " + choice, new Faults()).get(0), faults);

    assertThat(faults.any()).isFalse();
    assertThat(written.choice().matches(answer(answer))).isEqualTo(matches);
  }

  @ParameterizedTest
  @CsvSource({
    "pass 1d N R, pass 1d N R",
    "pass W G blind 1, pass W G blind 1",
    "blind 3, pass blind 3",
    "go on, go on",
    "courtesy 1, courtesy 1",
    "nothing, nothing",
    "mahjong, mahjong",
    "7d, discard 7d"
  })
  void move_inWords_isReadBackAsItself(String answer, String text) {
    Move move = answer(answer).get(0);
    ChoiceReader.Written written =
        ChoiceReader.read(SheetLine.of("expect " + move.text(), new Faults()).get(0), new Faults());

    assertThat(move.text()).isEqualTo(text);
    assertThat(written.choice().matches(List.of(move))).isTrue();
  }

  /** Whatever was typed, one word is used for one thing. */
  @ParameterizedTest
  @CsvSource({
    "throw E, discard E",
    "discard E, discard E",
    "call 4 then throw any E S, claim 4 then discard any E S",
    "Redeem 8c then Mahjong, exchange 8c then Mahjong"
  })
  void choice_inWordsOfTheTable_isShownInThoseOfTheSheet(String typed, String shown) {
    ChoiceReader.Written written =
        ChoiceReader.read(SheetLine.of("expect " + typed, new Faults()).get(0), new Faults());
    assertThat(written.choice().text()).isEqualTo(shown);
  }
}
