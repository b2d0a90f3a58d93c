/** Small exact sums about tiles: what comes, what is dealt, and how many draws are left. */
package org.tallywall.experiments.chances;
