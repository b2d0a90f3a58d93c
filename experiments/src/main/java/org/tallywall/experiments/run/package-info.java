/** Blocks of deals, computed in any order by any thread. */
package org.tallywall.experiments.run;
