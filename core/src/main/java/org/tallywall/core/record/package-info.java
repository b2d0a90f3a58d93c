/** What happened in a game, written down, read back, and checked against the rules. */
package org.tallywall.core.record;
