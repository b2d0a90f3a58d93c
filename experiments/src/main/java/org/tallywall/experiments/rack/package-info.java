/** Which lines of a card are nearest to a rack, and what it still wants for them. */
package org.tallywall.experiments.rack;
