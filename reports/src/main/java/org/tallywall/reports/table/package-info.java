/** Tables as plain values. */
package org.tallywall.reports.table;
