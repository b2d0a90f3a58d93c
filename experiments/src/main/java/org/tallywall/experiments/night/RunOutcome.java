package org.tallywall.experiments.night;

/**
 * How the run of a study went that did not fail.
 *
 * @param end how it ended
 * @param deals how many deals are done; where it was stopped, those that are kept
 */
public record RunOutcome(End end, long deals) {
  /** How a run can end. */
  public enum End {
    /** The results are complete. */
    COMPLETE,
    /** They were complete before, and nothing was played. */
    COMPLETE_BEFORE,
    /** It was asked to stop. */
    STOPPED
  }
}
