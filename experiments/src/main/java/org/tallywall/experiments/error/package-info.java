/** What a person is told when something cannot be done, and the exit code that goes with it. */
package org.tallywall.experiments.error;
