package org.tallywall.experiments.night;

import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.BlockPlayer;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.BlockCodec;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;

/**
 * A study made ready to be played.
 *
 * @param study the study
 * @param setup its card, with all hands, and its rules
 */
public record ReadyStudy(Study study, TableSetup setup) {
  /**
   * Makes a study ready.
   *
   * @param study the study
   */
  public ReadyStudy(Study study) {
    this(study, new TableSetup(new ConcreteHands(study.card()), study.rules()));
  }

  /**
   * A run of it that has not begun.
   *
   * @return its state
   */
  public RunState state() {
    return new RunState(
        study.extent().deals(),
        study.extent().blockSize(),
        study.extent().patience().faultsBorne());
  }

  /**
   * Turns its blocks into bytes and back.
   *
   * @return the codec
   */
  public BlockCodec codec() {
    return new BlockCodec(this::emptyTally);
  }

  StudyTally emptyTally() {
    return new StudyTally(PlayedDesign.planOf(study), setup);
  }

  /** What plays its blocks in one thread. */
  BlockPlayer player(Pulse pulse) {
    return new StudyPlayer(study, setup, pulse);
  }
}
