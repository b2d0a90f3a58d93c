package org.tallywall.experiments.study;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a study wants to know, declared before it runs.
 *
 * @param name the study's name, which names its results folder
 * @param words the question in a sentence, or empty
 * @param primary the one measure that answers it; empty where none is declared
 * @param secondary further measures
 * @param confidence the level of all intervals, between 0 and 1
 */
public record StudyQuestion(
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
  public StudyQuestion {
    secondary = List.copyOf(secondary);
  }

  /**
   * All measures: the primary one, the secondary ones, then those that nothing was said about.
   *
   * @return each once
   */
  public List<Measure> measures() {
    Set<Measure> all = new LinkedHashSet<>();
    primary.ifPresent(all::add);
    all.addAll(secondary);
    all.addAll(List.of(Measure.values()));
    return List.copyOf(all);
  }
}
