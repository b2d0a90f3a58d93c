/** Positions put to players, and scenes by which players are marked. */
package org.tallywall.experiments.ask;
