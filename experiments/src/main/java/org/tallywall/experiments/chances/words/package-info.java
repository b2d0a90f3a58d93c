/** What is said of exact sums about tiles: sentences, tables, charts, formulas, and sources. */
package org.tallywall.experiments.chances.words;
