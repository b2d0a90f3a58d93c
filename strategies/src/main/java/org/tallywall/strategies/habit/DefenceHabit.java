package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.read.OpponentReader;

/**
 * When to defend, step by step: own hand, careful, hold back, to the wall, the last wall. Each step
 * can be on or off; "two exposures" means two on one rack.
 */
public final class DefenceHabit {
  private static final String NAME = "defence.";

  private final boolean careful;
  private final int carefulAway;
  private final int carefulWall;
  private final boolean holdBack;
  private final int holdBackExposures;
  private final int holdBackAway;
  private final boolean toTheWall;
  private final int toTheWallExposures;
  private final int drawsPerMissing;
  private final int fromStartAway;
  private final int lastWall;
  private final boolean comesBack;

  /**
   * The habit.
   *
   * @param values the settings named {@code defence.…}
   */
  public DefenceHabit(SettingValues values) {
    careful = values.flag(NAME + "careful");
    carefulAway = values.whole(NAME + "careful.away-at-least");
    carefulWall = values.whole(NAME + "careful.below-wall");
    holdBack = values.flag(NAME + "hold-back");
    holdBackExposures = values.whole(NAME + "hold-back.exposures-on-one-rack");
    holdBackAway = values.whole(NAME + "hold-back.away-at-least");
    toTheWall = values.flag(NAME + "to-the-wall");
    toTheWallExposures = values.whole(NAME + "to-the-wall.exposures-on-one-rack");
    drawsPerMissing = values.whole(NAME + "to-the-wall.draws-per-missing-tile");
    fromStartAway = values.whole(NAME + "from-start-when-away-at-least");
    lastWall = values.whole(NAME + "last-wall");
    comesBack = values.flag(NAME + "comes-back");
  }

  /**
   * The settings.
   *
   * @param on whether the steps are on unless a study says otherwise
   * @return in the order listed
   */
  public static List<Setting> settings(boolean on) {
    return List.of(
        Setting.flag(
            NAME + "careful",
            on,
            "between tiles it does not need, throw the one that fewest live lines want"),
        Setting.number(
            NAME + "careful.away-at-least",
            "3",
            "1",
            "14",
            "careful from so many tiles away once somebody shows an exposure"),
        Setting.number(
            NAME + "careful.below-wall",
            "60",
            "0",
            "99",
            "careful too when the wall has so many tiles or fewer and the hand is one tile"
                + " further"),
        Setting.flag(
            NAME + "hold-back",
            on,
            "with exposures enough on one rack, keep her tiles (\"work out the line, hold"
                + " its tiles\")"),
        Setting.number(
            NAME + "hold-back.exposures-on-one-rack",
            "2",
            "1",
            "4",
            "hold back from so many exposures on one rack"),
        Setting.number(
            NAME + "hold-back.away-at-least",
            "3",
            "1",
            "14",
            "keep all of her tiles from so many tiles away; one nearer, throw those that can give"
                + " an"
                + " exposure only; nearer still, keep only what every line of hers wants"),
        Setting.flag(
            NAME + "to-the-wall",
            on,
            "give a hopeless hand up and throw safe tiles only (\"if you cannot win, do not"
                + " lose\")"),
        Setting.number(
            NAME + "to-the-wall.exposures-on-one-rack",
            "3",
            "1",
            "4",
            "give up with so many exposures on one rack and two tiles or more away"),
        Setting.number(
            NAME + "to-the-wall.draws-per-missing-tile",
            "2",
            "0",
            "5",
            "give up with fewer draws left for each missing tile while somebody shows two exposures"
                + " (\"count the draws\")"),
        Setting.number(
            NAME + "from-start-when-away-at-least",
            "14",
            "1",
            "14",
            "play for the wall from the first turn when so many tiles away"),
        Setting.flag(
            NAME + "comes-back",
            true,
            "one away, play on where a hand one tile further would be given up"),
        Setting.number(
            NAME + "last-wall",
            on ? "12" : "0",
            "0",
            "99",
            "with so many tiles left or fewer, only a hand one away plays on"));
  }

  /**
   * Whether any step is on.
   *
   * @return false for a player that always plays its own hand
   */
  public boolean isOn() {
    return careful || holdBack || toTheWall || lastWall > 0;
  }

  /**
   * The step that a position calls for.
   *
   * @param view what the seat knows
   * @param reader what it reads of the others
   * @param away distance of the 13-tile rack; {@link HandMeter#NONE} where all lines are dead
   * @return the step
   */
  public Stance stance(SeatView view, OpponentReader reader, int away) {
    int exposures = reader.mostExposures();
    if (lastWall > 0 && view.wallLeft() <= lastWall) {
      return Stance.LAST_WALL;
    }
    if (toTheWall && givesUp(view, away, exposures)) {
      return Stance.TO_THE_WALL;
    }
    if (toTheWall && away == 1 && givesUp(view, 2, exposures)) {
      return comesBack ? Stance.COMING_BACK : Stance.TO_THE_WALL;
    }
    if (holdBack && exposures >= holdBackExposures) {
      return Stance.HOLD_BACK;
    }
    boolean near = exposures > 0 && away >= carefulAway;
    boolean late = view.wallLeft() <= carefulWall && away > carefulAway;
    return careful && (near || late) ? Stance.CAREFUL : Stance.OWN_HAND;
  }

  private boolean givesUp(SeatView view, int away, int exposures) {
    int draws = view.wallLeft() / 4;
    return away == HandMeter.NONE
        || away >= fromStartAway
        || (exposures >= toTheWallExposures && away >= 2)
        || (exposures >= 2 && draws < drawsPerMissing * away)
        || draws < away;
  }

  /**
   * From how many tiles away all of her tiles are kept.
   *
   * @return 1 to 14
   */
  public int holdBackAway() {
    return holdBackAway;
  }

  /**
   * From how many exposures on one rack a player is feared.
   *
   * @return 1 to 4
   */
  public int fearedExposures() {
    return holdBackExposures;
  }
}
