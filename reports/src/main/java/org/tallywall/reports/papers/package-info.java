/** Papers made of results: the answer, notes, a page, where it all comes from. */
package org.tallywall.reports.papers;
