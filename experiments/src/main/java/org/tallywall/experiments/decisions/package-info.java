/** The decisions of a recorded game, each as the position that the player had in front of it. */
package org.tallywall.experiments.decisions;
