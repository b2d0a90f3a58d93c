package org.tallywall.experiments.study;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What the command line gives in place of what a study says.
 *
 * @param card another card file
 * @param rules a file of switches that replaces the study's rules
 * @param seed another seed
 * @param deals another number of deals
 */
public record Changes(
    Optional<Path> card, Optional<Path> rules, Optional<Long> seed, Optional<Long> deals) {
  /** The study as it is. */
  public static final Changes NONE =
      new Changes(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
