/** What tiles may lie where a seat cannot see: guesses of the hidden racks and the wall. */
package org.tallywall.strategies.guess;
