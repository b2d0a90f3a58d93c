package org.tallywall.experiments.study;

import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * A way of playing that a study compares with others.
 *
 * @param name what the study calls it
 * @param player who plays so
 */
public record Arm(String name, PlayerSpec player) {}
