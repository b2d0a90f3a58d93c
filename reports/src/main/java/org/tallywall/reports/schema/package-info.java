/**
 * The columns of every file of results: name, unit, meaning, and the heading that people read, once
 * for whoever writes, explains, reads or shows them.
 */
package org.tallywall.reports.schema;
