package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Player;
import org.tallywall.core.record.GameRecord;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.setting.SettingValues;

/** It is a watchful player, except where it tries choices out and one is surely better. */
class RolloutPlayerTest {
  private static final int DEALS = 15;

  private static GameRecord play(int deal, Player first) {
    return TestTable.play(
        deal,
        IntStream.range(0, 4)
            .mapToObj(
                seat ->
                    seat == deal % 4
                        ? first
                        : new HabitPlayer(SettingValues.standard(HabitPlayer.watchful())))
            .toList());
  }

  private static int otherwise(String... numbers) {
    Map<String, Object> changed = new HashMap<>();
    changed.put("rollout.playouts", new BigDecimal("40"));
    for (int at = 0; at < numbers.length; at += 2) {
      changed.put(numbers[at], new BigDecimal(numbers[at + 1]));
    }
    int otherwise = 0;
    for (int deal = 0; deal < DEALS; deal++) {
      Player watchful = new HabitPlayer(SettingValues.standard(HabitPlayer.watchful()));
      Player rollout = new RolloutPlayer(new SettingValues(RolloutPlayer.settings(), changed));
      otherwise += play(deal, rollout).equals(play(deal, watchful)) ? 0 : 1;
    }
    return otherwise;
  }

  @Test
  void someGames_goAnotherWayThanWithTheWatchfulPlayer() {
    assertThat(otherwise("rollout.surer-by", "0.5")).isBetween(1, DEALS - 1);
  }

  @Test
  void noGame_goesAnotherWayWhereNothingIsTried() {
    assertThat(otherwise("rollout.below-wall", "0")).isZero();
  }

  @Test
  void fewerGames_goAnotherWayTheSurerItMustBe() {
    assertThat(otherwise("rollout.surer-by", "3")).isLessThan(otherwise("rollout.surer-by", "0"));
  }
}
