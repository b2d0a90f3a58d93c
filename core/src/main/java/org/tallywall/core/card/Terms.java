package org.tallywall.core.card;

/**
 * What a line pays and what it allows.
 *
 * @param value points, above 0
 * @param concealed whether nothing may be exposed before mahjong
 * @param jokers whether jokers may stand in its groups of three or more
 * @param jokerless whether a hand made without jokers is doubled
 */
public record Terms(int value, boolean concealed, boolean jokers, boolean jokerless) {}
