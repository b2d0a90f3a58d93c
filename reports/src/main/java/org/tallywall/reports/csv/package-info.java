/** Tables written as CSV: full precision, fixed order, the same bytes everywhere. */
package org.tallywall.reports.csv;
