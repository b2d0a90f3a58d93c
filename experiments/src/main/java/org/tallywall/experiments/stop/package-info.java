/** When a run may stop because of what it has found, without cheating. */
package org.tallywall.experiments.stop;
