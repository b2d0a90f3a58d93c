package org.tallywall.experiments.gauges.calibration;

import java.util.List;
import org.tallywall.core.hand.ConcreteHands;

/**
 * What was said and what happened on one card, with the usual evidence alone.
 *
 * @param name what the card is called
 * @param digest the card's digest
 * @param hands the judge of racks: one {@code reckoner}, the others never declare
 * @param wins wins on a tile thrown, four {@code reckoner}
 * @param exposures exposures with a tile thrown, four {@code reckoner}
 */
record OneCard(String name, String digest, Bins hands, Bins wins, Bins exposures) {
  /** Plays so many games of each kind. */
  static OneCard play(ConcreteHands card, long seed, int games) {
    CalibrationGames played = new CalibrationGames(card, "reckoner", seed, games);
    HandTally alone = played.hands();
    played.alone(alone);
    RiskTally risks = new RiskTally(List.of(CalibrationPage.WAYS.get(0)));
    played.together(played.hands(), risks);
    return new OneCard(
        card.card().name(), card.card().digest(), alone.that(), risks.winBins(), risks.claimBins());
  }
}
