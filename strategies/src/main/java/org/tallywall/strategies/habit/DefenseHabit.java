package org.tallywall.strategies.habit;

import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.SeatView;
import org.tallywall.strategies.setting.SettingValues;

/**
 * When to defend, step by step: own hand, careful, hold back, to the wall, the last wall. Each step
 * can be on or off; "two exposures" means two on one rack.
 */
public final class DefenseHabit {
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
  private final boolean keepsHersToTheLast;

  /**
   * The habit.
   *
   * @param values the settings, {@link DefenseSettings} among them
   */
  public DefenseHabit(SettingValues values) {
    careful = values.get(DefenseSettings.CAREFUL);
    carefulAway = values.get(DefenseSettings.CAREFUL_AWAY);
    carefulWall = values.get(DefenseSettings.CAREFUL_WALL);
    holdBack = values.get(DefenseSettings.HOLD_BACK);
    holdBackExposures = values.get(DefenseSettings.HOLD_BACK_EXPOSURES);
    holdBackAway = values.get(DefenseSettings.HOLD_BACK_AWAY);
    toTheWall = values.get(DefenseSettings.TO_THE_WALL);
    toTheWallExposures = values.get(DefenseSettings.TO_THE_WALL_EXPOSURES);
    drawsPerMissing = values.get(DefenseSettings.DRAWS_PER_MISSING);
    fromStartAway = values.get(DefenseSettings.FROM_START_AWAY);
    lastWall = values.get(DefenseSettings.LAST_WALL);
    comesBack = values.get(DefenseSettings.COMES_BACK);
    carefulRisk = values.get(DefenseSettings.CAREFUL_RISK);
    holdBackRisk = values.get(DefenseSettings.HOLD_BACK_RISK);
    keepsHers = values.get(DefenseSettings.HER_TILES) == HerTiles.KEEP;
    hersFrom = values.get(DefenseSettings.HERS_FROM_SHARE);
    toTheWallAway = values.get(DefenseSettings.TO_THE_WALL_AWAY);
    keepsHersToTheLast = values.get(DefenseSettings.LAST_WALL_HERS) == HerTiles.KEEP;
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
   * Whether one away in the last wall keeps all of her tiles, whatever it costs.
   *
   * @return false where they are weighed against the own hand
   */
  boolean keepsHersToTheLast() {
    return keepsHersToTheLast;
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
