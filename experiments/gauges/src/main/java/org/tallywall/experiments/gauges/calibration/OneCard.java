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
 * @param allSeen wins on a tile thrown, by all that can be seen, four {@code reckoner}
 * @param hopes winning by what the rest of the rack is worth, four {@code reckoner}
 */
record OneCard(
    String name, String digest, Bins hands, Bins wins, Bins exposures, Bins allSeen, Bins hopes) {
  /** Plays so many games of each kind. */
  static OneCard play(ConcreteHands card, long seed, int games) {
    CalibrationGames played = new CalibrationGames(card, "reckoner", seed, games);
    HandTally alone = played.hands();
    played.alone(alone);
    RiskTally risks =
        new RiskTally(
            List.of(CalibrationPage.WAYS.get(0), CalibrationPage.WAYS.get(CalibrationPage.ALL)));
    HopeTally hopes = played.hopes();
    played.together(played.hands(), risks, hopes);
    return new OneCard(
        card.card().name(),
        card.card().digest(),
        alone.that(),
        risks.winBins(0),
        risks.claimBins(),
        risks.winBins(1),
        hopes.won());
  }
}
