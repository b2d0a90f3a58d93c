/** Pictures as dots (PNG), drawn from the SVG. Their bytes may differ between machines. */
package org.tallywall.reports.png;
