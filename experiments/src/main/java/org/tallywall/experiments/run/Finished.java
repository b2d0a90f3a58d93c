package org.tallywall.experiments.run;

/**
 * A block that is done.
 *
 * @param result what came out
 * @param kept whether it was known from an earlier run
 */
record Finished(BlockResult result, boolean kept) {}
