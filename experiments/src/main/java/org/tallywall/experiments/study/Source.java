package org.tallywall.experiments.study;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The files that a study was made of.
 *
 * @param study the study file
 * @param card the card file
 * @param givenCard the card file given in place of the study's own
 * @param givenRules the rules file given in place of the study's own rules
 */
public record Source(Path study, Path card, Optional<Path> givenCard, Optional<Path> givenRules) {
  /**
   * Whether the study was played on another card or by other rules than its file says.
   *
   * @return true for a derived study
   */
  public boolean derived() {
    return givenCard.isPresent() || givenRules.isPresent();
  }
}
