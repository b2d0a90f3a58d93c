package org.tallywall.strategies.player;

/**
 * How much is tried before a choice is made, and how sure it must be.
 *
 * @param playouts playouts for one decision, over all choices; each choice has one at least
 * @param surerBy standard errors by which a choice must be better than the usual one to be taken
 * @param halving whether only the better half of the choices is tried further, again and again;
 *     otherwise all of them have the same number of playouts
 */
record Effort(int playouts, double surerBy, boolean halving) {}
