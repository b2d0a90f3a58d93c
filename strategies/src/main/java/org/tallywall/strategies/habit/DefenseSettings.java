package org.tallywall.strategies.habit;

import java.util.List;
import org.tallywall.strategies.setting.Setting;

/** The settings of the steps of defense, all of them off. */
public final class DefenseSettings {
  private static final String NAME = "defense.";

  /** Whether there is a careful step. */
  public static final Setting<Boolean> CAREFUL =
      Setting.onOff(NAME + "careful")
          .usual(false)
          .says("between tiles that it does not need, throws the one that fewest live lines want");

  /** From how far away to be careful. */
  public static final Setting<Integer> CAREFUL_AWAY =
      Setting.whole(NAME + "careful.away-at-least")
          .from(1)
          .to(14)
          .usual(3)
          .says("is careful from so many tiles away once somebody shows an exposure");

  /** From which wall on to be careful. */
  public static final Setting<Integer> CAREFUL_WALL =
      Setting.whole(NAME + "careful.below-wall")
          .from(0)
          .to(99)
          .usual(60)
          .says(
              "is careful too with so many tiles in the wall, or fewer, when the hand is one tile "
                  + "further");

  /** How much risk counts while careful. */
  public static final Setting<Double> CAREFUL_RISK =
      Setting.decimal(NAME + "careful.risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(1.0)
          .says(
              "while careful, counts the points at risk so many times as much as those hoped for");

  /** Whether to hold back. */
  public static final Setting<Boolean> HOLD_BACK =
      Setting.onOff(NAME + "hold-back")
          .usual(false)
          .says(
              "keeps the tiles that an opponent with enough exposures can use (\"work out the line,"
                  + " hold its tiles\")");

  /** From how many exposures to hold back. */
  public static final Setting<Integer> HOLD_BACK_EXPOSURES =
      Setting.whole(NAME + "hold-back.exposures-on-one-rack")
          .from(1)
          .to(4)
          .usual(2)
          .says("holds back from so many exposures on one rack");

  /** From how far away to hold back. */
  public static final Setting<Integer> HOLD_BACK_AWAY =
      Setting.whole(NAME + "hold-back.away-at-least")
          .from(1)
          .to(14)
          .usual(3)
          .says(
              "holds back from so many tiles away; one nearer, less; one away, plays on and keeps "
                  + "only what ends the game on every line of hers");

  /** What to do with her tiles. */
  public static final Setting<HerTiles> HER_TILES =
      Setting.choice(NAME + "hold-back.her-tiles", HerTiles.class)
          .usual(HerTiles.KEEP)
          .says(
              "keeps her tiles: whatever that costs (keep), where its own hand does not count for "
                  + "more (weigh) (\"hold her tiles\")");

  /** How much risk counts while holding back. */
  public static final Setting<Double> HOLD_BACK_RISK =
      Setting.decimal(NAME + "hold-back.risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(1.5)
          .says(
              "while holding back, counts the points at risk so many times as much as those hoped "
                  + "for");

  /** When a tile is one of hers. */
  public static final Setting<Double> HERS_FROM_SHARE =
      Setting.decimal(NAME + "hers-from-share")
          .from(0.0)
          .to(1.0)
          .usual(0.25)
          .says(
              "takes a tile for one of hers if a share of so much of the hands left to her wants "
                  + "it; 0 takes it if any does");

  /** Whether to give up. */
  public static final Setting<Boolean> TO_THE_WALL =
      Setting.onOff(NAME + "to-the-wall")
          .usual(false)
          .says(
              "gives a hopeless hand up and throws safe tiles only (\"if you cannot win, do not "
                  + "lose\")");

  /** From how many exposures to give up. */
  public static final Setting<Integer> TO_THE_WALL_EXPOSURES =
      Setting.whole(NAME + "to-the-wall.exposures-on-one-rack")
          .from(1)
          .to(4)
          .usual(3)
          .says("gives up with so many exposures on one rack and far enough away");

  /** From how far away to give up. */
  public static final Setting<Integer> TO_THE_WALL_AWAY =
      Setting.whole(NAME + "to-the-wall.away-at-least")
          .from(2)
          .to(14)
          .usual(2)
          .says("gives up only from so many tiles away once an opponent shows enough exposures");

  /** How few draws make a hand hopeless. */
  public static final Setting<Integer> DRAWS_PER_MISSING =
      Setting.whole(NAME + "to-the-wall.draws-per-missing-tile")
          .from(0)
          .to(5)
          .usual(2)
          .says(
              "gives up with fewer than so many draws left for each missing tile while somebody "
                  + "shows two exposures (\"count the draws\")");

  /** From how far away to play for the wall at once. */
  public static final Setting<Integer> FROM_START_AWAY =
      Setting.whole(NAME + "from-start-when-away-at-least")
          .from(1)
          .to(14)
          .usual(14)
          .says("plays for the wall from the first turn when so many tiles away, or further");

  /** Whether to come back one away. */
  public static final Setting<Boolean> COMES_BACK =
      Setting.onOff(NAME + "comes-back")
          .usual(true)
          .says("one away, plays on where a hand one tile further would be given up");

  /** How many tiles the last wall has. */
  public static final Setting<Integer> LAST_WALL =
      Setting.whole(NAME + "last-wall")
          .from(0)
          .to(99)
          .usual(0)
          .says("with so many tiles left or fewer, plays on only with a hand one away");

  private DefenseSettings() {}

  /**
   * All of them.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> all() {
    return List.of(
        CAREFUL,
        CAREFUL_AWAY,
        CAREFUL_WALL,
        CAREFUL_RISK,
        HOLD_BACK,
        HOLD_BACK_EXPOSURES,
        HOLD_BACK_AWAY,
        HER_TILES,
        HOLD_BACK_RISK,
        HERS_FROM_SHARE,
        TO_THE_WALL,
        TO_THE_WALL_EXPOSURES,
        TO_THE_WALL_AWAY,
        DRAWS_PER_MISSING,
        FROM_START_AWAY,
        COMES_BACK,
        LAST_WALL);
  }
}
