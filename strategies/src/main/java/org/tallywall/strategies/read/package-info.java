/** Judging opponents: what their exposures leave possible, and which tiles they may want. */
package org.tallywall.strategies.read;
