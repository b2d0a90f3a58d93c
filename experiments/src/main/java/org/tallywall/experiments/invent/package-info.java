/**
 * Practice cards drawn at random.
 *
 * <p>A {@link org.tallywall.experiments.invent.Sketcher} draws a line of its family from relations
 * of numbers, shapes of groups, suits, winds, dragons and flowers; the {@link
 * org.tallywall.experiments.invent.CardInventor} keeps those that can be made and share no hand,
 * and prices them by how hard they are. No line is typed in: any likeness to a printed one is
 * chance.
 */
package org.tallywall.experiments.invent;
