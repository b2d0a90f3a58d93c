/** Intervals and other statistics made from tallies. */
package org.tallywall.experiments.stats;
