/** Judging racks: which lines are within reach, and how far away they are. */
package org.tallywall.strategies.hand;
