package org.tallywall.reports.document;

/** Whether a section can be folded away. On paper everything is unfolded. */
public enum Fold {
  /** Always to be seen. */
  FIXED,
  /** Unfolded at first. */
  OPEN,
  /** Folded at first. */
  CLOSED
}
