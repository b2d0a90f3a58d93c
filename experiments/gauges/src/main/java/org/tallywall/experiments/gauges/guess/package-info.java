/** Whether guessed tiles are where they are said to be, and what the traits of racks count for. */
package org.tallywall.experiments.gauges.guess;
