/**
 * Tables as plain values, and how their numbers become text.
 *
 * <p>A {@link org.tallywall.reports.table.Table} knows what every column means and holds every
 * number in full. The writers of the other packages turn it into a file or a page: those for
 * machines write all digits ({@link org.tallywall.reports.table.NumberText}), those for people
 * round once, in {@link org.tallywall.reports.table.CellText}.
 */
package org.tallywall.reports.table;
