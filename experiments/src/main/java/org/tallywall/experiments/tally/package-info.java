/** Exact integer tallies that can be merged in any order. */
package org.tallywall.experiments.tally;
