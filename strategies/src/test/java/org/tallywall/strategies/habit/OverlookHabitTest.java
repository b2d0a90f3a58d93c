package org.tallywall.strategies.habit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Player;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.SettingValues;

/** Lapses come with the chance set, and where it is 0 they cost no random number. */
class OverlookHabitTest {
  private static final int ASKED = 4000;

  private static OverlookHabit habit(String exchange, String call, String win) {
    return new OverlookHabit(
        new SettingValues(
            OverlookHabit.settings(),
            Map.of(
                "overlooks.exchange", new BigDecimal(exchange),
                "overlooks.call", new BigDecimal(call),
                "overlooks.win", new BigDecimal(win))));
  }

  private static RandomStream stream(long decision) {
    return new RandomStream(new StreamKey(31, 0, Purpose.DECISION, 0, 0, decision));
  }

  @Test
  void noChance_drawsNothing() {
    RandomStream asked = stream(1);
    OverlookHabit habit = habit("0", "0", "0");
    assertThat(habit.exchange(asked) || habit.call(asked) || habit.win(asked)).isFalse();
    assertThat(asked.nextLong()).isEqualTo(stream(1).nextLong());
  }

  /**
   * Hypothesis: a lapse of chance 0.3 happens in 0.3 of 4,000 questions, each with numbers of its
   * own; standard deviation 28.98. Four of them from 1,200 bound the count: a fresh seed would fail
   * with chance 6.3e-5 (normal table), for three kinds together 2e-4.
   */
  @Test
  void chance_isThatSet() {
    OverlookHabit habit = habit("0.3", "0.3", "0.3");
    int[] count = new int[3];
    for (int at = 0; at < ASKED; at++) {
      count[0] += habit.exchange(stream(3L * at)) ? 1 : 0;
      count[1] += habit.call(stream(3L * at + 1)) ? 1 : 0;
      count[2] += habit.win(stream(3L * at + 2)) ? 1 : 0;
    }
    for (int kind : count) {
      assertThat(kind).isBetween(1200 - 116, 1200 + 116);
    }
  }

  @Test
  void games_areTheSameWithAllLapsesZero() {
    for (String id : List.of("newcomer", "reckoner", "watchful")) {
      PlayerType type = Catalog.standard().type(id).orElseThrow();
      PlayerSpec usual = new PlayerSpec(type, Map.of());
      PlayerSpec zero =
          usual
              .with("overlooks.exchange", new BigDecimal("0.0"))
              .with("overlooks.call", new BigDecimal("0.0"))
              .with("overlooks.win", new BigDecimal("0.0"));
      for (int deal = 0; deal < 10; deal++) {
        assertThat(TestTable.play(deal, four(zero))).isEqualTo(TestTable.play(deal, four(usual)));
      }
    }
  }

  private static List<Player> four(PlayerSpec spec) {
    return IntStream.range(0, 4).mapToObj(seat -> spec.make()).toList();
  }
}
