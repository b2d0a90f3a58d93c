package org.tallywall.strategies.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.rules.TableRules;

class StakesTest {
  @Test
  void usualPayments_areThoseThatWereCounted() {
    Stakes stakes = Stakes.of(TableRules.STANDARD);

    assertThat(stakes.throwing()).isEqualTo(2);
    assertThat(stakes.payingAll()).isEqualTo(4);
    assertThat(stakes.lost(50)).isEqualTo(40);
    assertThat(stakes.between(50)).isEqualTo(160);
  }

  /** By hand: 42 of 100 wins pay three times the self-drawn rate, 58 what is paid on a discard. */
  @ParameterizedTest
  @CsvSource({
    "4, 0, 2, 4, 4, 1.0",
    "1, 1, 1, 1, 3, 0.619834710743802",
    "2, 1, 1, 2, 4, 0.739669421487603",
    "4, 1, 2, 4, 6, 1.239669421487603",
    "3, 0, 2, 3, 3, 0.880165289256198"
  })
  void otherPayments_goWithWhatAWinMoves(
      int discarder, int others, int drawn, double throwing, double all, double share) {
    Stakes stakes =
        Stakes.of(
            TableRules.of(
                Map.of(
                    "score.discarder", discarder,
                    "score.othersOnDiscard", others,
                    "score.selfDrawn", drawn)));

    assertThat(stakes.throwing()).isEqualTo(throwing);
    assertThat(stakes.payingAll()).isEqualTo(all);
    assertThat(stakes.lost(50)).isCloseTo(40 * share, within(1e-9));
    assertThat(stakes.between(50)).isCloseTo(160 * share, within(1e-9));
  }

  @Test
  void pointsInAWallGame_makeLosingCheaper_mostWhereTheWallIsLow() {
    Stakes stakes = Stakes.of(TableRules.of(Map.of("score.wallGame", 20)));

    assertThat(stakes.lost(10)).isCloseTo(40 - 0.70 * 20, within(1e-9));
    assertThat(stakes.lost(90)).isCloseTo(40 - 0.043 * 20, within(1e-9));
    assertThat(stakes.between(10)).isCloseTo(160 - 0.70 * 20, within(1e-9));
  }
}
