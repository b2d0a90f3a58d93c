package org.tallywall.experiments.club;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.text.FaultyFileException;

/** What a club types is read as it is meant, or refused with what to write instead. */
class TallySheetTest {
  private static final Card CARD =
      CardFile.read(java.nio.file.Path.of("cards/pebble-cove.json")).orThrow();

  private static ClubTally read(String... lines) {
    return TallySheet.read("tally.csv", String.join("\n", lines), CARD);
  }

  @Test
  void read_whatIsLeftOut_wasNotCounted() {
    assertThat(read("games, 50", "# a note, 3", "wall games,7", "self-picked wins,"))
        .isEqualTo(new ClubTally(50, OptionalInt.of(7), OptionalInt.empty(), List.of()));
  }

  @Test
  void read_sections_standInTheOrderOfTheCard() {
    ClubTally tally = read("won on Hops;4", "GAMES\t20", "\"won on stairs\",3", "won on Twins,");
    assertThat(tally.sections()).containsExactly(3, 4, 0, 0, 0, 0, 0);
    assertThat(tally.noted()).isEqualTo(7);
    assertThat(tally.wins()).isEqualTo(7);
  }

  @Test
  void toFill_filledIn_isRead() {
    String filled =
        TallySheet.toFill(CARD)
            .replace("\ngames,", "\ngames,30")
            .replace("wall games,", "wall games,2");
    assertThat(TallySheet.read("tally.csv", filled, CARD).wins()).isEqualTo(28);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "wall games, 3              | there is no number of games",
        "games, 0/wall games, 0     | \"games\" is a number from 1 to 10,000",
        "games, 20                  | nothing is counted besides the games",
        "games, 20/wal games, 3     | did you mean \"wall games\"?",
        "games, 20/wall games, -3   | whole number from 0 to 10,000, not -3",
        "games, 99999999999999      | whole number from 0 to 10,000",
        "games, 20/games, 30        | stands here twice",
        "games, 20/wall games, 21   | more wall games (21) than games (20)",
        "games, 20/self-picked wins, 3 | need the wall games or the sections",
        "games, 9/wall games, 3/won on Hops, 7 | the sections have 7 wins, but only 6 games were won",
        "games, 9/won on Hops, 0    | the sections have no win",
        "games, 9/wall games, 3/self-picked wins, 7 | more self-picked wins (7) than wins (6)",
      })
  void read_whatCannotBe_isRefusedInASentence(String lines, String said) {
    assertThatThrownBy(() -> read(lines.split("/")))
        .isInstanceOf(FaultyFileException.class)
        .hasMessageContaining(said);
  }
}
