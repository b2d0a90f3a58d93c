package org.tallywall.experiments.gauges.guess;

/**
 * What a seat kept after a discard, and how the game ended for it.
 *
 * @param seen the numbers of {@link org.tallywall.strategies.hand.WinHope}
 * @param won whether it won
 */
record Kept(double[] seen, boolean won) {}
