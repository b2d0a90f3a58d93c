/** The card as a person reads it: families, lines, groups; read from files and read back aloud. */
package org.tallywall.core.card;
