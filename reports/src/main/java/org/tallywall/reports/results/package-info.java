/** Results read back from their folder, for everything that is made of them afterwards. */
package org.tallywall.reports.results;
