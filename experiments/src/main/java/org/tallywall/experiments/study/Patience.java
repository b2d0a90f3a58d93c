package org.tallywall.experiments.study;

/**
 * What a study bears of its players. No number of the results depends on it: it only says when a
 * run gives up.
 *
 * @param faultsBorne how many deals may be set aside because a player broke down or answered
 *     illegally, 0 or more
 * @param decisionSeconds how long a player may take for an answer, in seconds, 1 or more
 */
public record Patience(long faultsBorne, long decisionSeconds) {
  /** The longest time for an answer: a day. */
  public static final long MOST_SECONDS = 86_400;

  /** No fault is borne, and an answer may take ten seconds. */
  public static final Patience USUAL = new Patience(0, 10);
}
