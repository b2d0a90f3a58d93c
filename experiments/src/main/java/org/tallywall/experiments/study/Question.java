package org.tallywall.experiments.study;

import java.util.List;
import java.util.Optional;

/**
 * What a study wants to know, declared before it runs.
 *
 * @param name the study's name, which names its results folder
 * @param words the question in a sentence, or empty
 * @param primary the one measure that answers it; empty where none is declared
 * @param secondary further measures
 * @param confidence the level of all intervals, between 0 and 1
 */
public record Question(
    String name,
    String words,
    Optional<Measure> primary,
    List<Measure> secondary,
    double confidence) {
  /**
   * Copies the measures.
   *
   * @param name the study's name
   * @param words the question
   * @param primary the one measure that answers it
   * @param secondary further measures
   * @param confidence the level of all intervals
   */
  public Question {
    secondary = List.copyOf(secondary);
  }
}
