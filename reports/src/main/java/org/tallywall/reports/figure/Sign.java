package org.tallywall.reports.figure;

/** Whether a number above 0 carries a plus. */
public enum Sign {
  /** Only minus is written: levels. */
  MINUS_ONLY,
  /** Plus and minus are written: differences. */
  PLUS_AND_MINUS
}
