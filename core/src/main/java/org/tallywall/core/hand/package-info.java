/** The card as the computer reads it: concrete hands as bits, and how far a rack is from them. */
package org.tallywall.core.hand;
