/** Tables as lines of a console. */
package org.tallywall.reports.text;
