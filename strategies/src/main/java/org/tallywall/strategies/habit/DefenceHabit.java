package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.SeatView;

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
  private final double carefulRisk;
  private final double holdBackRisk;
  private final boolean keepsHers;
  private final double hersFrom;
  private final int toTheWallAway;

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
    carefulRisk = values.number(NAME + "careful.risk-weight");
    holdBackRisk = values.number(NAME + "hold-back.risk-weight");
    keepsHers = values.word(NAME + "hold-back.her-tiles").equals("keep");
    hersFrom = values.number(NAME + "hers-from-share");
    toTheWallAway = values.whole(NAME + "to-the-wall.away-at-least");
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
        Setting.number(
            NAME + "careful.risk-weight",
            "1",
            "0.0",
            "20.0",
            "how much the points at risk count beside those hoped for while careful"),
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
            "hold back from so many tiles away; one nearer, less; one away, play on and keep only"
                + " what ends the game on every line of hers"),
        Setting.word(
            NAME + "hold-back.her-tiles",
            "keep them all whatever it costs, or weigh them against the own hand (\"hold her tiles\")",
            on ? "weigh" : "keep",
            on ? "keep" : "weigh"),
        Setting.number(
            NAME + "hold-back.risk-weight",
            "1.5",
            "0.0",
            "20.0",
            "how much the points at risk count beside those hoped for while holding back"),
        Setting.number(
            NAME + "hers-from-share",
            "0.25",
            "0.0",
            "1.0",
            "a tile is one of hers if that share of the hands left to her wants it; 0: if any"
                + " does"),
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
            "give up with so many exposures on one rack and far enough away"),
        Setting.number(
            NAME + "to-the-wall.away-at-least",
            on ? "6" : "2",
            "2",
            "14",
            "give up against so many exposures only from so many tiles away"),
        Setting.number(
            NAME + "to-the-wall.draws-per-missing-tile",
            on ? "0" : "2",
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
   * @param exposures the most exposures on one other rack, 0 to 4
   * @param away distance of the 13-tile rack; {@link HandMeter#NONE} where all lines are dead
   * @return the step
   */
  public Stance stance(SeatView view, int exposures, int away) {
    if (lastWall > 0 && view.wallLeft() <= lastWall) {
      return Stance.LAST_WALL;
    }
    if (toTheWall && givesUp(view, away, exposures)) {
      return Stance.TO_THE_WALL;
    }
    if (toTheWall && away == 1 && givesUp(view, Math.max(2, toTheWallAway), exposures)) {
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
        || (exposures >= toTheWallExposures && away >= toTheWallAway)
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

  /**
   * How much the risk counts while careful.
   *
   * @return weight beside the points hoped for
   */
  double carefulRisk() {
    return carefulRisk;
  }

  /**
   * How much the risk counts while holding back.
   *
   * @return weight beside the points hoped for
   */
  double holdBackRisk() {
    return holdBackRisk;
  }

  /**
   * Whether holding back keeps all of her tiles, whatever it costs.
   *
   * @return false where they are weighed against the own hand
   */
  boolean keepsHers() {
    return keepsHers;
  }

  /**
   * From which share of her live hands a tile is one of hers.
   *
   * @return 0 to 1
   */
  double hersFrom() {
    return hersFrom;
  }
}
