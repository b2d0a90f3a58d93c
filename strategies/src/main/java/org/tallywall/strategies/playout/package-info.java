/** Playing the rest of a game out after a choice, in guesses of the hidden tiles. */
package org.tallywall.strategies.playout;
