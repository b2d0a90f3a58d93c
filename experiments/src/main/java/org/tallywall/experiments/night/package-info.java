/** A study from its file to its results folder. */
package org.tallywall.experiments.night;
