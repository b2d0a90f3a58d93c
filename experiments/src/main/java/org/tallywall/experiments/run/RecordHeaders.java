package org.tallywall.experiments.run;

import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.experiments.study.Study;

/** Heads the records of a study's games. */
public final class RecordHeaders {
  private RecordHeaders() {}

  /**
   * The head of a record of a game at one fixed table, where the game has the deal's number.
   *
   * @param study the study
   * @param setup the card and the rules
   * @param deal the deal
   * @param players who sits where, as the study writes them
   * @return the head
   */
  public static GameRecord.Header of(
      Study study, TableSetup setup, long deal, List<Object> players) {
    return of(study.question().name(), setup, study.extent().seed(), deal, players);
  }

  /**
   * The head of a record of a single game.
   *
   * @param study the study's name, or empty
   * @param setup the card and the rules
   * @param seed the seed
   * @param deal the deal
   * @param players who sits where
   * @return the head
   */
  public static GameRecord.Header of(
      String study, TableSetup setup, long seed, long deal, List<Object> players) {
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
