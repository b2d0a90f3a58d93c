package org.tallywall.core.card;

/**
 * Equal tiles that a line prints together.
 *
 * @param term what the tiles are
 * @param size how many, 1 to 6; two or fewer are loose tiles that take no joker
 */
public record Group(Term term, int size) {}
