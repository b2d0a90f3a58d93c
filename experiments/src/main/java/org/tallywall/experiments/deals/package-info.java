/** Playing deals: tables with players, and what is noted of their games. */
package org.tallywall.experiments.deals;
