package org.tallywall.experiments.attack;

/**
 * A position with the card that it is about.
 *
 * @param text the sheet
 * @param card the card, as JSON
 */
record Scene(String text, String card) {}
