/** Results as tables for readers. */
package org.tallywall.reports.tables;
