package org.tallywall.experiments.cli;

import java.util.function.Function;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.review.UnlawfulChoiceException;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunEndingPlayerException;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.study.Patience;
import org.tallywall.strategies.catalog.WrongPlayerException;

/** Has players asked, which may break down or take for ever. */
final class PatientAsk {
  private PatientAsk() {}

  /**
   * Asks in a thread of its own.
   *
   * @param who words for whom is asked, with which a fault is told
   * @param work asks through the pulse
   */
  static <T> T ask(String who, Function<Pulse, T> work) {
    Pulse pulse = new Pulse();
    RunLimits limits = RunLimits.of(1, Patience.USUAL.decisionSeconds());
    try {
      return Patient.wait(pulse, limits, () -> work.apply(pulse));
    } catch (Throwable thrown) {
      throw told(who, thrown);
    }
  }

  /** What a player did that was asked, as a fault that can be told. */
  static RuntimeException told(String who, Throwable thrown) {
    if (thrown instanceof IllegalMoveException illegal) {
      return new FailedException(who + " answered with " + illegal.getMessage(), illegal);
    } else if (thrown instanceof WrongPlayerException told) {
      return told;
    } else if (thrown instanceof WrongInputException || thrown instanceof UnlawfulChoiceException) {
      return (RuntimeException) thrown;
    } else if (thrown instanceof RunEndingPlayerException end) {
      return new FailedException(who + " " + end.getMessage(), end);
    }
    return new FailedException(who + " broke down; --debug shows where", thrown);
  }
}
