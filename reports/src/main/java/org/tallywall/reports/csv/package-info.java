/** Tables as comma-separated files, every digit kept. */
package org.tallywall.reports.csv;
