package org.tallywall.experiments.deals;

import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.experiments.run.GamePlace;
import org.tallywall.experiments.study.Study;

/** Heads the records of a study's games. */
public final class RecordHeaders {
  private RecordHeaders() {}

  /**
   * The head of a record of a study's game.
   *
   * @param study the study
   * @param setup the card and the rules
   * @param place which of the study's games it is
   * @param players who sits where, as the study writes them
   * @return the head
   */
  static GameRecord.Header of(
      Study study, TableSetup setup, GamePlace place, List<Object> players) {
    Card card = setup.hands().card();
    return new GameRecord.Header(
        study.question().name(),
        study.extent().seed(),
        place.game(),
        place.deal(),
        place.arm(),
        place.seat(),
        new GameRecord.CardName(card.name(), card.digest()),
        setup.rules().switches(),
        players);
  }

  /**
   * The head of a record of a single game.
   *
   * @param setup the card and the rules
   * @param study the study's name, or empty
   * @param seed the seed
   * @param deal the deal
   * @param players who sits where
   * @return the head
   */
  public static GameRecord.Header of(
      TableSetup setup, String study, long seed, long deal, List<Object> players) {
    Card card = setup.hands().card();
    return new GameRecord.Header(
        study,
        seed,
        study.isEmpty() ? 0 : deal,
        deal,
        "",
        -1,
        new GameRecord.CardName(card.name(), card.digest()),
        setup.rules().switches(),
        players);
  }
}
