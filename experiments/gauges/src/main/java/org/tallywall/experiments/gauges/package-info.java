/** How well the players play, on four cards and on the scenes, and when their games end. */
package org.tallywall.experiments.gauges;
