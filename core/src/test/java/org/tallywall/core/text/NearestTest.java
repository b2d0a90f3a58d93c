package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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
    "say, say",
    "'', id"
  })
  void nearest_ofAMistypedWord_isTheOneMeant(String typed, String meant) {
    assertThat(Nearest.of(typed, KNOWN)).isEqualTo(meant);
  }
}
