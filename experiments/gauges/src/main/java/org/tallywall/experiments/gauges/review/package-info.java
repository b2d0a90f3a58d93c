/** How far reviews of positions can be trusted: shorter ones against much longer ones. */
package org.tallywall.experiments.gauges.review;
