package org.tallywall.experiments.run;

/** How a run ended that did not fail. */
public enum Ending {
  /** Every block was played. */
  ALL,
  /** Whoever read the results wanted no more. */
  ENOUGH,
  /** It was asked to stop before. */
  STOPPED
}
