package org.tallywall.reports.figure;

/** Whether something is one of those compared, or what they are compared with. */
public enum Standing {
  /** One of those compared: a filled dot. */
  COMPARED,
  /** What the others are compared with: a hollow square. */
  BASELINE
}
