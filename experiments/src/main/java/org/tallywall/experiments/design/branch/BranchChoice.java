package org.tallywall.experiments.design.branch;

import java.util.Optional;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One of the options that a study compares at its decision: something that is done, or a player
 * that makes this one decision as it would.
 *
 * @param name what the study and its files call it
 * @param what what is done; empty where a player decides
 * @param player who decides; empty where it is said what is done
 */
public record BranchChoice(String name, Optional<BranchOption> what, Optional<PlayerSpec> player) {
  /**
   * Something that is done.
   *
   * @param what what
   * @return the choice, called as the option is
   */
  public static BranchChoice of(BranchOption what) {
    return new BranchChoice(what.text(), Optional.of(what), Optional.empty());
  }

  /**
   * A player's choice.
   *
   * @param name what the study calls it
   * @param player who decides
   * @return the choice
   */
  public static BranchChoice of(String name, PlayerSpec player) {
    return new BranchChoice(name, Optional.empty(), Optional.of(player));
  }

  /**
   * Whether the study has it as a bare word.
   *
   * @return false for one with a name of its own
   */
  boolean isWord() {
    return what.filter(option -> option.text().equals(name)).isPresent();
  }
}
