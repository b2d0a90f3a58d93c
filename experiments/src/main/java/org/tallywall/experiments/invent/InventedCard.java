package org.tallywall.experiments.invent;

import org.tallywall.core.card.Card;

/**
 * A practice card drawn at random.
 *
 * @param seed the seed it was drawn from
 * @param text the card as a file
 * @param card the card
 */
public record InventedCard(long seed, String text, Card card) {}
