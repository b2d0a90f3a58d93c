package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a mistyped word most likely means. */
class NearestTest {
  private static final List<String> KNOWN =
      List.of("id", "say", "tiles", "slide", "where", "value", "concealed", "jokers", "jokerless");

  @ParameterizedTest
  @CsvSource({
    "tile, tiles",
    "Tiles, tiles",
    "VALUE, value",
    "vlaue, value",
    "conceled, concealed",
    "joker, jokers",
    "jokerles, jokerless",
    "slides, slide",
    "here, where",
    "say, say"
  })
  void nearest_ofAMistypedWord_isTheOneMeant(String typed, String meant) {
    assertThat(Nearest.of(typed, KNOWN)).contains(meant);
  }

  private static final List<String> WORDS =
      List.of(
          "rack", "run", "report", "discard", "stop", "defense.hold-back", "wall.hot", "family");

  @ParameterizedTest
  @CsvSource({
    "rak, rack",
    "RUNN, run",
    "rnu, run",
    "repotr, report",
    "discrad, discard",
    "defence.hold-back, defense.hold-back",
    "hold-back, defense.hold-back",
    "wall.hott, wall.hot",
    "repo, report",
    "throw, discard",
    "section, family",
  })
  void of_aWordNearOrOfTheSameMeaning_isFound(String typed, String meant) {
    assertThat(Nearest.of(typed, WORDS)).contains(meant);
  }

  @ParameterizedTest
  @CsvSource({"nosuch", "version", "help", "zzz", "x", "defenestrate", "''"})
  void of_aWordLikeNone_isNoGuess(String typed) {
    assertThat(Nearest.of(typed, WORDS)).isEmpty();
  }

  @Test
  void of_theBeginningOfTwo_isNoGuess() {
    assertThat(Nearest.of("aim", List.of("aim.targets", "aim.haste"))).isEmpty();
  }

  @Test
  void advice_withAndWithoutAGuess_listsAll() {
    assertThat(Nearest.advice("seet", List.of("seat", "rack")))
        .isEqualTo("; did you mean \"seat\"? (known: seat, rack)");
    assertThat(Nearest.advice("moment", List.of("seat", "rack"))).isEqualTo(" (known: seat, rack)");
  }
}
