package org.tallywall.strategies.catalog;

/**
 * A setting of a player.
 *
 * @param name its name in a study, as in {@code claims.not-before-wall}
 * @param standard its default as written in a study
 * @param range what it may be, in words
 * @param meaning what it does, in a sentence
 */
public record Setting(String name, String standard, String range, String meaning) {}
