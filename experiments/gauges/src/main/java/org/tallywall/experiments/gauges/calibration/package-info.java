/** Whether what players say happens as often as they say it. */
package org.tallywall.experiments.gauges.calibration;
