package org.tallywall.experiments.design;

import java.util.OptionalDouble;
import org.tallywall.experiments.study.Measure;

/**
 * How small a difference a run will be able to notice, told before it is played.
 *
 * @param arm the way of playing that is compared
 * @param measure what the study asks about
 * @param size the true difference a game that it notices nine times in ten, in the measure's unit;
 *     empty where too few of the deals known so far differ to tell
 * @param together comparisons among which the allowance for chance findings is shared, 1 or more
 */
public record Noticed(String arm, Measure measure, OptionalDouble size, int together) {}
