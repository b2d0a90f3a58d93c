/** One setting at several values. */
package org.tallywall.experiments.design.sweep;
