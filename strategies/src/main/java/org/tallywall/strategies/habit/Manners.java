package org.tallywall.strategies.habit;

import org.tallywall.strategies.setting.Preset;

/**
 * What sound players do where it costs little: no pair, no honors together and no flower to one
 * player; no call from far away, for nothing, or with two jokers beside one tile; the colder of two
 * useless tiles; a stop and blind passes when near; one tile across. Each is a setting of its own;
 * here is the lot.
 */
public final class Manners {
  /** How much of a rack's worth a manner may cost, as a share. */
  private static final double NEARLY_THE_SAME = 0.02;

  private Manners() {}

  /**
   * A player with manners.
   *
   * @param player a way of playing that has none of them yet
   * @return the same with all of them
   * @throws IllegalArgumentException if it has one of them already
   */
  public static Preset of(Preset player) {
    return player
        .with(Giving.FLOWERS, true)
        .with(HandedOver.NO_PAIR, true)
        .with(HandedOver.NO_HONORS, true)
        .with(Giving.POLITE, NEARLY_THE_SAME)
        .with(PassHabit.BLIND_AWAY, 5)
        .with(StopHabit.STRANGERS, 3)
        .with(CourtesyHabit.AT_MOST, 1)
        .with(ClaimTiming.AWAY, 5)
        .with(ClaimHabit.NEARER, 1)
        .with(ClaimHabit.BESIDE_ONE, true)
        .with(ColderHabit.WITHIN, NEARLY_THE_SAME);
  }
}
