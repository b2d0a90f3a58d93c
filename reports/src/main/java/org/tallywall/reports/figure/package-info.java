/**
 * Figures as plain values: what is shown, in which units, in which words; nothing about how it is
 * drawn. Numbers stay in full; {@link org.tallywall.reports.figure.PlotValue} rounds them for
 * people, by the rule of the tables.
 */
package org.tallywall.reports.figure;
