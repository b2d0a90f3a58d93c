/** Counts in recorded games what a strong teacher would laugh at, rule by rule. */
package org.tallywall.experiments.manners;
