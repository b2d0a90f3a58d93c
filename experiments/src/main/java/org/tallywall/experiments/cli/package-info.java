/** The command line: one class a command. */
package org.tallywall.experiments.cli;
