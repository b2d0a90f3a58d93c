package org.tallywall.strategies.habit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Player;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.Replay;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.player.HabitPlayer;
import org.tallywall.strategies.setting.SettingValues;

class DearerWinTest {
  private static ClaimChoice claim(String rack, String offered, Map<String, Object> rules) {
    return new DearerWin()
        .claim(new HandMadeView(TestTable.HANDS, rack, TableRules.of(rules)).offered(offered));
  }

  /** All pay double for an exchange: 6 units; on a discard 4. */
  @Test
  void joker_inAnotherGroup_isLaidOpenAndRedeemed() {
    assertThat(claim("NNNEEWWWSSSS J", "N", Map.of())).isEqualTo(ClaimChoice.expose(4, 1));
  }

  /** An exchange pays 3 units or 6, a discard 4 or 6; or the rules do not allow the exchange. */
  @ParameterizedTest
  @CsvSource({
    "win.exchangePaidAs, SINGLE",
    "joker.exchange, OTHERS_ONLY",
    "joker.exchangeAfterClaim, false",
    "score.selfDrawn, 1"
  })
  void otherRules_declareAtOnce(String rule, String value) {
    Object written = value;
    if (value.equals("false")) {
      written = false;
    } else if (Character.isDigit(value.charAt(0))) {
      written = Integer.valueOf(value);
    }
    assertThat(claim("NNNEEWWWSSSS J", "N", Map.of(rule, written))).isNull();
  }

  /** Six units of 30 with the joker are less than four of 60 without any. */
  @Test
  void natural_paidDouble_isNotGivenUpForAJoker() {
    HandMadeView view =
        new HandMadeView(TestTable.HANDS, "NEWS RRR GGG 000").exposed(3, "GJJ").offered("R");

    assertThat(new DearerWin().claim(view)).isNull();
  }

  @Test
  void natural_notPaidDouble_isGivenUpForTheJokerOfAnother() {
    TableRules rules = TableRules.of(Map.of("score.jokerless", 1));
    HandMadeView view =
        new HandMadeView(TestTable.HANDS, "NEWS RRR GGG 000", rules).exposed(3, "GJJ").offered("R");

    assertThat(new DearerWin().claim(view)).isEqualTo(ClaimChoice.expose(4, 0));
  }

  private static List<GameRecord> play(TableRules rules, boolean dearer, int games) {
    SettingValues values =
        new SettingValues(HabitPlayer.reckoner(), Map.of("wins.dearer-by-exchange", dearer));
    List<GameRecord> all = new ArrayList<>();
    for (int deal = 0; deal < games; deal++) {
      List<Player> seats = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        seats.add(new HabitPlayer(values));
      }
      all.add(TestTable.play(deal, seats, rules));
    }
    return all;
  }

  /** Nothing is played otherwise where it never pays. */
  @Test
  void games_whereAnExchangeIsPaidSingle_areTheSame() {
    TableRules single = TableRules.of(Map.of("win.exchangePaidAs", "SINGLE"));

    assertThat(play(single, true, 60)).isEqualTo(play(single, false, 60));
  }

  /** Every hand laid open so is won in the same turn, and everybody pays double. */
  @Test
  void games_wherePaidAsSelfPicked_endAsTheyShould() {
    int dearer = 0;
    for (GameRecord game : play(TableRules.STANDARD, true, 60)) {
      assertThat(Replay.check(TestTable.HANDS, game)).isEmpty();
      List<GameEvent> last = game.events().subList(game.events().size() - 3, game.events().size());
      if (last.get(0) instanceof GameEvent.Claim claim
          && last.get(1) instanceof GameEvent.Exchange
          && last.get(2) instanceof GameEvent.Mahjong) {
        dearer++;
        int won = game.end().points().get(claim.seat());
        assertThat(game.end().points().stream().filter(paid -> paid == -won / 3)).hasSize(3);
      }
    }
    assertThat(dearer).isPositive();
  }
}
