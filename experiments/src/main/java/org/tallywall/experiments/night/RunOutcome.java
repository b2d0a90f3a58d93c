package org.tallywall.experiments.night;

import java.util.Optional;
import org.tallywall.experiments.answer.StudyAnswer;

/**
 * How the run of a study went that did not fail.
 *
 * @param end how it ended
 * @param deals how many deals are done
 * @param faults how many deals were set aside
 * @param answer what the study answers; empty where it is not known
 */
public record RunOutcome(End end, long deals, int faults, Optional<StudyAnswer> answer) {
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
