package org.tallywall.experiments.gauges.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** A few hundred games: what is tallied is what was played, counted again without the tallies. */
class CalibrationGamesTest {
  private static final long SEED = 61_803;
  private static final int GAMES = 200;
  private static final ConcreteHands CARD =
      CalibrationPage.card(Path.of("../cards/saltmarsh-quay.json"));
  private static HandTally hands;
  private static RiskTally risks;
  private static HopeTally hopes;
  private static Plain plain;

  @BeforeAll
  static void play() {
    CalibrationGames games = new CalibrationGames(CARD, "watchful", SEED, GAMES);
    hands = games.hands();
    risks = new RiskTally(CalibrationPage.WAYS);
    hopes = games.hopes();
    games.together(hands, risks, hopes);
    plain = new Plain();
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      players.add(
          new PlayerSpec(Catalog.standard().type("watchful").orElseThrow(), Map.of()).make());
    }
    Game game = new Game(new TableSetup(CARD, TableRules.STANDARD), players, plain);
    for (int deal = 0; deal < GAMES; deal++) {
      game.play(Deal.of(SEED, deal, TileSet.USUAL));
    }
  }

  /** Counts events of the same games played without anybody watching. */
  private static final class Plain implements GameListener {
    private long discards;
    private long naturals;
    private long winsOnDiscards;
    private long exposures;

    @Override
    public void discarded(int seat, int tile) {
      discards++;
      naturals += tile == Tile.JOKER ? 0 : 1;
    }

    @Override
    public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
      winsOnDiscards += by == WinBy.DISCARD ? 1 : 0;
    }

    @Override
    public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
      exposures++;
    }
  }

  private static long decisions(Bins bins) {
    return bins.rows().stream().mapToLong(Bins.Row::count).sum();
  }

  private static long happened(Bins bins) {
    return Math.round(bins.rows().stream().mapToDouble(row -> row.happened() * row.count()).sum());
  }

  @Test
  void risks_allBins_addUpToTheGamesPlayedUnwatched() {
    assertThat(plain.naturals).isGreaterThan(5_000);
    assertThat(decisions(risks.winBins(0))).isEqualTo(3 * plain.naturals);
    assertThat(decisions(risks.claimBins())).isEqualTo(3 * plain.naturals);
    assertThat(happened(risks.winBins(0))).isEqualTo(plain.winsOnDiscards);
    assertThat(happened(risks.claimBins())).isEqualTo(plain.exposures);
  }

  @Test
  void hands_allBins_holdEveryDiscardOnce() {
    long judged = decisions(hands.that());
    assertThat(judged).isBetween(plain.discards * 99 / 100, plain.discards);
    assertThat(decisions(hands.any())).isEqualTo(judged);
    assertThat(decisions(hands.byAway())).isEqualTo(judged);
    assertThat(decisions(hands.byWall())).isEqualTo(judged);
    assertThat(happened(hands.byAway())).isEqualTo(happened(hands.that()));
    assertThat(happened(hands.that())).isBetween(1L, happened(hands.any()) - 1);
  }

  @Test
  void hopes_holdEveryDiscardOnce_andAreWonAsOftenAsAnyHand() {
    assertThat(decisions(hopes.won())).isEqualTo(plain.discards);
    assertThat(happened(hopes.won())).isBetween(happened(hands.any()), happened(hands.any()) + 20);
  }

  /**
   * Hypothesis: reading all that can be seen makes the chances of wins no better (mean difference
   * of the log scores 0 or less). 200 games, seed fixed, of deals to which nothing was fitted;
   * rejected where the difference lies more than 1.644854 standard errors above 0 (normal quantile
   * of a one-sided 0.05).
   */
  @Test
  void allThatCanBeSeen_bettersTheChancesOfWins() {
    Score.Mean more = risks.winScores().get(CalibrationPage.ALL).logarithmicMore();
    double error = (more.high() - more.low()) / 2 / 1.96;
    assertThat(-more.value()).isGreaterThan(1.644854 * error);
  }

  @Test
  void scores_usualWay_differsFromItselfByNothing() {
    assertThat(risks.winScores().get(0).squaredMore().value()).isZero();
    assertThat(risks.claimScores().get(0).logarithmicMore().value()).isZero();
  }

  /**
   * Hypothesis: evidence of discards does not better the chances of exposures (mean difference of
   * the log scores 0 or less). 200 games, seed fixed; rejected where the difference lies more than
   * 4.753424 standard errors above 0 (normal quantile of a one-sided 1e-6), so evidence worth
   * nothing would pass once in a million seeds.
   */
  @Test
  void discards_asEvidence_betterTheChancesOfExposures() {
    int way =
        CalibrationPage.WAYS.stream().map(RiskTally.Way::name).toList().indexOf("no discards");
    Score.Mean more = risks.claimScores().get(way).logarithmicMore();
    double error = (more.high() - more.low()) / 2 / 1.96;
    assertThat(more.value()).isGreaterThan(4.753424 * error);
  }

  @Test
  void alone_othersNeverDeclare_theWatchedWinsMoreOften() {
    CalibrationGames games = new CalibrationGames(CARD, "reckoner", SEED, 40);
    HandTally alone = games.hands();
    games.alone(alone);
    HandTally among = games.hands();
    games.together(among, new RiskTally(CalibrationPage.WAYS), games.hopes());
    double there = (double) happened(alone.any()) / decisions(alone.any());
    double here = (double) happened(among.any()) / decisions(among.any());
    assertThat(there).isGreaterThan(here + 0.2);
  }
}
