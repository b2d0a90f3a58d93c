/** From tallies to the tables that a person reads. */
package org.tallywall.experiments.answer;
