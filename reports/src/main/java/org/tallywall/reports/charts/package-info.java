/** Results as charts. */
package org.tallywall.reports.charts;
