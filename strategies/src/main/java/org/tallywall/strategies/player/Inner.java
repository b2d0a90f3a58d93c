package org.tallywall.strategies.player;

import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.strategies.setting.SettingValues;

/** Who plays the games out that a {@link RolloutPlayer} tries. */
enum Inner {
  NEAREST,
  RECKONER,
  WATCHFUL,
  RANDOM_LEGAL;

  Supplier<Player> maker() {
    return switch (this) {
      case NEAREST -> NearestPlayer::new;
      case RECKONER -> () -> new HabitPlayer(SettingValues.standard(HabitPlayer.reckoner()));
      case WATCHFUL -> () -> new HabitPlayer(SettingValues.standard(HabitPlayer.watchful()));
      case RANDOM_LEGAL -> RandomLegalPlayer::new;
    };
  }
}
