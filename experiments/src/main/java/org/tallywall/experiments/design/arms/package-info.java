/** Several ways of playing on the same deals. */
package org.tallywall.experiments.design.arms;
