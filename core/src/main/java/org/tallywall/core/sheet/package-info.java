/** A position as plain lines: read, checked, put to a player, and its answer compared. */
package org.tallywall.core.sheet;
