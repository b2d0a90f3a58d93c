package org.tallywall.experiments.tally;

/**
 * What a study counts.
 *
 * @param arms ways of playing
 * @param pairs comparisons of two ways of playing
 * @param firings habits of which it is counted when they come into play
 * @param measures measures compared
 * @param tables tables of a round-robin
 */
public record TallyPlan(int arms, int pairs, int firings, int measures, int tables) {}
