package org.tallywall.experiments.study;

import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.KnowsHabit;

/**
 * A way of playing that a study compares with others.
 *
 * @param name what the study calls it
 * @param player who plays so
 */
public record Arm(String name, PlayerSpec player) {
  private static final String MARK = " (" + KnowsHabit.MARK + ")";

  /**
   * A name without the mark of a yardstick.
   *
   * @param name as a study or a command has it
   * @return the same where it has none
   */
  public static String plain(String name) {
    return name.endsWith(MARK) ? name.substring(0, name.length() - MARK.length()) : name;
  }

  /**
   * The same way of playing, by the name that all results show: that of a player whose settings let
   * it see more than its seat may says so.
   *
   * @return the way of playing, marked or plain
   */
  public Arm marked() {
    boolean sees = player.mark().filter(KnowsHabit.MARK::equals).isPresent();
    return new Arm(plain(name) + (sees ? MARK : ""), player);
  }
}
