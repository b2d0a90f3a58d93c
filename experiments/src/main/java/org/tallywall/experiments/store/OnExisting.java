package org.tallywall.experiments.store;

/** What to do when the results folder is there already. */
public enum OnExisting {
  /** Refuse to run. */
  FAIL,
  /** Replace it when the new results are complete. */
  OVERWRITE
}
