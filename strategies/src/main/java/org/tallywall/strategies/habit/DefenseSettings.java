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
          .says("among tiles it does not need, throws the safest");

  /** From how far away to be careful. */
  public static final Setting<Integer> CAREFUL_AWAY =
      Setting.whole(NAME + "careful.away-at-least")
          .from(1)
          .to(14)
          .usual(3)
          .says("is careful when at least this many tiles away and someone shows an exposure");

  /** From which wall on to be careful. */
  public static final Setting<Integer> CAREFUL_WALL =
      Setting.whole(NAME + "careful.below-wall")
          .from(0)
          .to(99)
          .usual(60)
          .says(
              "is careful, exposures or not, with this many tiles left in the wall or fewer, if it "
                  + "is one tile further away");

  /** How much risk counts while careful. */
  public static final Setting<Double> CAREFUL_RISK =
      Setting.decimal(NAME + "careful.risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(1.0)
          .says(
              "while careful, counts the points at risk this many times as much as the points "
                  + "hoped for");

  /** Whether to hold back. */
  public static final Setting<Boolean> HOLD_BACK =
      Setting.onOff(NAME + "hold-back")
          .usual(false)
          .says(
              "keeps the tiles that an opponent with enough exposures can use (\"work out the "
                  + "line, hold its tiles\")");

  /** From how many exposures to hold back. */
  public static final Setting<Integer> HOLD_BACK_EXPOSURES =
      Setting.whole(NAME + "hold-back.exposures-on-one-rack")
          .from(1)
          .to(4)
          .usual(2)
          .says("holds back when one rack shows this many exposures or more");

  /** From how far away to hold back. */
  public static final Setting<Integer> HOLD_BACK_AWAY =
      Setting.whole(NAME + "hold-back.away-at-least")
          .from(1)
          .to(14)
          .usual(3)
          .says(
              "holds back when at least this many tiles away; one tile nearer, it holds back less; "
                  + "one away, it plays on and keeps only what ends the game on every line she can have");

  /** What to do with her tiles. */
  public static final Setting<HerTiles> HER_TILES =
      Setting.choice(NAME + "hold-back.her-tiles", HerTiles.class)
          .usual(HerTiles.KEEP)
          .says(
              "keeps her tiles: whatever that costs (keep), unless its own hand counts for more "
                  + "(weigh) (\"hold her tiles\")");

  /** How much risk counts while holding back. */
  public static final Setting<Double> HOLD_BACK_RISK =
      Setting.decimal(NAME + "hold-back.risk-weight")
          .from(0.0)
          .to(20.0)
          .usual(1.5)
          .says(
              "while holding back, counts the points at risk this many times as much as the points "
                  + "hoped for");

  /** When a tile is one of hers. */
  public static final Setting<Double> HERS_FROM_SHARE =
      Setting.decimal(NAME + "hers-from-share")
          .from(0.0)
          .to(1.0)
          .usual(0.25)
          .says(
              "counts a tile as hers if a share of at least this much of the hands she can still "
                  + "have wants it; 0 counts it if any does");

  /** Whether to give up. */
  public static final Setting<Boolean> TO_THE_WALL =
      Setting.onOff(NAME + "to-the-wall")
          .usual(false)
          .says(
              "gives up a hopeless hand and throws only safe tiles (\"if you cannot win, do not "
                  + "lose\")");

  /** From how many exposures to give up. */
  public static final Setting<Integer> TO_THE_WALL_EXPOSURES =
      Setting.whole(NAME + "to-the-wall.exposures-on-one-rack")
          .from(1)
          .to(4)
          .usual(3)
          .says(
              "gives up when one rack shows this many exposures or more and its own hand is far "
                  + "enough away");

  /** From how far away to give up. */
  public static final Setting<Integer> TO_THE_WALL_AWAY =
      Setting.whole(NAME + "to-the-wall.away-at-least")
          .from(2)
          .to(14)
          .usual(2)
          .says(
              "gives up only when at least this many tiles away, once an opponent shows enough "
                  + "exposures");

  /** How few draws make a hand hopeless. */
  public static final Setting<Integer> DRAWS_PER_MISSING =
      Setting.whole(NAME + "to-the-wall.draws-per-missing-tile")
          .from(0)
          .to(5)
          .usual(2)
          .says(
              "gives up with fewer than this many draws left for each missing tile, while somebody "
                  + "shows two exposures (\"count the draws\")");

  /** From how far away to play for the wall at once. */
  public static final Setting<Integer> FROM_START_AWAY =
      Setting.whole(NAME + "from-start-when-away-at-least")
          .from(1)
          .to(14)
          .usual(14)
          .says("plays for the wall from the first turn when at least this many tiles away");

  /** Whether to come back one away. */
  public static final Setting<Boolean> COMES_BACK =
      Setting.onOff(NAME + "comes-back")
          .usual(true)
          .says("one away, plays on even where it would give up a hand one tile further away");

  /** How many tiles the last wall has. */
  public static final Setting<Integer> LAST_WALL =
      Setting.whole(NAME + "last-wall")
          .from(0)
          .to(99)
          .usual(0)
          .says("with this many tiles left or fewer, plays on only if one away");

  /** What to do with her tiles in the last wall. */
  public static final Setting<HerTiles> LAST_WALL_HERS =
      Setting.choice(NAME + "last-wall.her-tiles", HerTiles.class)
          .usual(HerTiles.KEEP)
          .says(
              "one away in the last wall, keeps her tiles: whatever that costs (keep), unless its own "
                  + "hand counts for more (weigh)");

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
        LAST_WALL,
        LAST_WALL_HERS);
  }
}
