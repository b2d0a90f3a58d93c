package org.tallywall.experiments.design.branch;

import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.habit.DefenseSettings;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Throws what it drew, wins when it can, and claims for nothing else; East claims nothing at all.
 * What it throws in its first turn, and in the one turn that matters, is set up.
 */
final class Robot implements Player {
  /** No tile was drawn: the first turn. */
  static final int NOTHING = -1;

  /** Throws, of two tiles held, one by its own need and the other for safety. */
  record Choice(int first, int danger, int ownNeed, int safest) {}

  private final Choice choice;
  private final boolean safe;

  private Robot(Choice choice, boolean safe) {
    this.choice = choice;
    this.safe = safe;
  }

  /** The robot as a study's player, with the settings that make it throw the safest tile. */
  static PlayerSpec spec(Choice choice) {
    List<Setting<?>> settings =
        List.of(
            DefenseSettings.TO_THE_WALL,
            DefenseSettings.FROM_START_AWAY,
            DefenseSettings.LAST_WALL);
    PlayerType type =
        new PlayerType(
            "robot",
            "does what it is set up to do",
            settings,
            (SettingValues values) -> new Robot(choice, values.get(DefenseSettings.TO_THE_WALL)));
    return new PlayerSpec(type, java.util.Map.of());
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    if (view.complete()) {
      return TurnChoice.mahjong();
    }
    if (view.seat() == 0 && view.drawn() == choice.danger()) {
      return TurnChoice.discard(safe ? choice.safest() : choice.ownNeed());
    }
    return TurnChoice.discard(view.drawn() < 0 ? choice.first() : view.drawn());
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return view.seat() != 0 && view.complete() ? ClaimChoice.mahjong() : ClaimChoice.nothing();
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    throw new IllegalStateException("there are no passes at this table");
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return 0;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return new int[0];
  }
}
