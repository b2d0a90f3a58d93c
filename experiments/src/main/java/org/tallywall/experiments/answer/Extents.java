package org.tallywall.experiments.answer;

import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.study.StudyQuestion;
import org.tallywall.experiments.study.Until;
import org.tallywall.reports.table.CellText;

/** Says how much was played, and why it ended there. */
public final class Extents {
  private Extents() {}

  /**
   * The question, the deals and the card.
   *
   * @param answer the answer
   * @return a line
   */
  public static String title(StudyAnswer answer) {
    StudyQuestion question = answer.study().question();
    return (question.words().isEmpty() ? question.name() : question.words())
        + " ("
        + count(answer.tally().deals())
        + " deals, "
        + count(answer.tally().games())
        + " games, "
        + answer.study().card().name()
        + ")";
  }

  /**
   * Why the run ended where it did.
   *
   * @param answer the answer
   * @return a sentence or two
   */
  public static String end(StudyAnswer answer) {
    if (answer.stopping().isEmpty()) {
      return "The number of deals was fixed in advance.";
    }
    Stopping stopping = answer.stopping().get();
    String looked =
        stopping.until().rule() == Until.Rule.SPRT
            ? "Wald's sequential test"
            : "a range that holds at every look";
    String pilot =
        stopping.pilots()
            ? " The first "
                + count(answer.study().extent().blockSize())
                + " deals only told what to"
                + " expect and are left out."
            : "";
    return (stopping.decision() == Stopping.Decision.REACHED
            ? "Stopped by " + looked + " after " + count(answer.tally().deals()) + " deals."
            : "Played to the last deal allowed without reaching what the study asked for ("
                + looked
                + ").")
        + pilot;
  }

  /**
   * A count.
   *
   * @param number the number
   * @return with commas
   */
  public static String count(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
