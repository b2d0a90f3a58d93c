package org.tallywall.core.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wrong word is named with its place and what to write instead. */
class TileTextFaultsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "113b 99q S     | 8  | 99q    | there is no tile \"q\"; tiles are 1 to 9 with b, c or d",
        "13b n          | 5  | n      | there is no tile \"n\"; write N",
        "13B            | 3  | 13B    | there is no tile \"B\"; write b",
        "13b f          | 5  | f      | there is no tile \"f\"; write F",
        "1O3b           | 2  | 1O3b   | there is no tile \"O\"; write 0, the digit zero",
        "13b w          | 5  | w      | there is no tile \"w\"; write W for west, 0 for the white dragon",
        "13b s          | 5  | s      | there is no tile \"s\"; write S for south, 0 for soap",
        "\u201C13b      | 1  | \u201C13b | there is no tile \"\u201C\"; take the curly quote out",
        "5b D           | 4  | D      | there is no tile \"D\"; write d for dots, or R, G, 0 for a dragon",
        "5x             | 2  | 5x     | there is no tile \"x\"",
        "5b-6b          | 3  | 5b-6b  | there is no tile \"-\"",
        "\uD83C\uDC00   | 1  | \uD83C\uDC00 | there is no tile \"\uD83C\uDC00\"",
        "F 113          | 3  | 113    | the number has no suit; write b, c or d after it, as in 5b",
        "F 5N           | 3  | 5N     | the number has no suit",
        "5 b            | 1  | 5      | the number has no suit",
        "N b            | 3  | b      | there is no number before b; write 5b",
        "N 0b           | 4  | 0b     | there is no number before b; write 5b",
        "1b 55555c      | 4  | 55555c | there are only 4 of 5c; take one out",
        "55c R 55c 5c   | 11 | 5c     | there are only 4 of 5c; take one out",
        "NNNNN          | 1  | NNNNN  | there are only 4 of N; take one out",
        "00 20b 0 0d 1d | 11 | 0d     | there is no number before d",
        "00 20b 00      | 8  | 00     | there are only 4 of 0; take one out",
        "FFFFFFFFF      | 1  | FFFFFFFFF | there are only 8 of F; take one out",
        "JJJJ, JJJJJ    | 7  | JJJJJ  | there are only 8 of J; take one out",
      })
  void rack_withAFault_namesWordPlaceAndRemedy(
      String text, int position, String word, String remedy) {
    NotationException fault =
        catchThrowableOfType(NotationException.class, () -> TileText.rack(text));
    assertThat(fault).isNotNull();
    assertThat(fault.position()).isEqualTo(position);
    assertThat(fault).hasMessageStartingWith("\"" + word + "\" at character ");
    assertThat(fault).hasMessageContaining(remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "333cJ 34c    | 7 | 34c     | an exposure has one kind of tile; write the next exposure as a word of its own",
        "RRG          | 1 | RRG     | an exposure has one kind of tile",
        "3cJ3c        | 1 | 3cJ3c   | write the naturals first, then the jokers, as in 333cJ",
        "JJJ          | 1 | JJJ     | an exposure has at least one natural tile, as in 3cJJ",
        "33c          | 1 | 33c     | an exposure has 3 to 6 tiles, not 2",
        "FFFFFFF      | 1 | FFFFFFF | an exposure has 3 to 6 tiles, not 7",
        "0000 33333c  | 6 | 33333c  | there are only 4 of 3c; take one out",
        "333 c        | 1 | 333     | the number has no suit",
        "333q         | 4 | 333q    | there is no tile \"q\"",
      })
  void exposures_withAFault_nameWordPlaceAndRemedy(
      String text, int position, String word, String remedy) {
    NotationException fault =
        catchThrowableOfType(NotationException.class, () -> TileText.exposures(text));
    assertThat(fault).isNotNull();
    assertThat(fault.position()).isEqualTo(position);
    assertThat(fault).hasMessageStartingWith("\"" + word + "\" at character ");
    assertThat(fault).hasMessageContaining(remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "123456789b NEW      |               | 12 tiles on the rack; write 13 or 14",
        "1b                  |               | 1 tile on the rack; write 13 or 14",
        "123456789b NEWS RG  |               | 15 tiles on the rack; write 13 or 14",
        "123456789b          | 333cJ NNN     | 9 on the rack + 7 exposed = 16; write 13 or 14 together",
        "123456789b          | 333c          | 9 on the rack + 3 exposed = 12; write 13 or 14 together",
        "''                  | 333c NNN RRRJ | 0 on the rack + 10 exposed = 10; write 13 or 14 together",
      })
  void whole_ofAWrongNumber_saysHowManyThereAre(String rack, String exposures, String message) {
    List<Exposure> open = TileText.exposures(exposures == null ? "" : exposures);
    assertThatThrownBy(() -> TileText.checkWhole(TileText.rack(rack), open))
        .isInstanceOf(NotationException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "123456789b 33c JJ | 333cJ    | hold 5 of 3c; there are only 4",
        "JJJJJ 12b     | 1cJJ 2cJJJ   | hold 10 of J; there are only 8",
        "FFFFF         | FFFF 1bJJJJ  | hold 9 of F; there are only 8",
      })
  void whole_withOneCopyTooMany_saysOfWhichKind(String rack, String exposures, String message) {
    List<Exposure> open = TileText.exposures(exposures);
    assertThatThrownBy(() -> TileText.checkWhole(TileText.rack(rack), open))
        .isInstanceOf(NotationException.class)
        .hasMessageContaining(message);
  }

  @Test
  void whole_of13Or14Tiles_isGood() {
    TileText.checkWhole(TileText.rack("123456789b NEWS"), List.of());
    TileText.checkWhole(TileText.rack("123456789b 3c"), TileText.exposures("333cJ"));
    TileText.checkWhole(TileText.rack("12b"), TileText.exposures("333cJ 0000 FFFJ"));
    TileText.checkWhole(TileText.rack(""), TileText.exposures("333cJ 0000 FFFJJ"));
  }

  @ParameterizedTest
  @CsvSource({"''", "55b", "1b 2b", "x"})
  void tile_thatIsNotExactlyOne_isRefused(String text) {
    assertThatThrownBy(() -> TileText.tile(text)).isInstanceOf(NotationException.class);
  }

  @ParameterizedTest
  @CsvSource({"35,3,0", "-1,3,0", "5,2,0", "5,7,0", "5,3,3", "5,3,-1"})
  void exposure_outsideTheRange_isRefused(int kind, int size, int jokers) {
    assertThatThrownBy(() -> new Exposure(kind, size, jokers))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Nobody's hand is that long: the work ends at a bound, and so does the message. */
  @Test
  void text_tooLongToBeTiles_isRefusedWithTheBound() {
    assertThatThrownBy(() -> TileText.rack("1".repeat(201) + "b"))
        .isInstanceOf(NotationException.class)
        .hasMessageEndingWith("1…\" at character 1: a word has at most 200 letters; split it");
    for (String part : new String[] {"1b ", "x", "\u001b", ","}) {
      assertThatThrownBy(() -> TileText.exposures(part.repeat(5_000_000)))
          .isInstanceOf(NotationException.class)
          .hasMessageEndingWith("at character 1: tiles are written in at most 10000 characters")
          .satisfies(
              refused ->
                  assertThat(refused.getMessage()).hasSizeLessThan(700).doesNotContain("\u001b"));
    }
  }

  @Test
  void letter_thatATerminalObeys_isShownVisibly() {
    assertThatThrownBy(() -> TileText.rack("1b \u001b[2J"))
        .hasMessageStartingWith("\"\\u{1b}[2J\" at character 4: there is no tile \"\\u{1b}\"");
    assertThatThrownBy(() -> TileText.rack("5\ud800"))
        .hasMessageStartingWith("\"5\\u{d800}\" at character 2: there is no tile \"\\u{d800}\"");
  }
}
