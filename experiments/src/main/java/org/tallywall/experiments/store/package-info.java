/** The results folder: crash-safe files and where they came from. */
package org.tallywall.experiments.store;
