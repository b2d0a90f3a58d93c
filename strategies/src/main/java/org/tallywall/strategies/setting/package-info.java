/** Settings of players: typed constants by which they are written in a study, and read. */
package org.tallywall.strategies.setting;
