package org.tallywall.experiments.story;

import java.util.Locale;
import org.tallywall.core.sheet.Moment;

/** What a player is asked at a moment, in words. */
public final class MomentWords {
  private MomentWords() {}

  /**
   * The question of a moment.
   *
   * @param moment the moment
   * @param seats what the seats are called
   * @param tiles how tiles are named
   * @return a question, as in {@code Drew 4d. What now?}
   */
  public static String question(Moment moment, SeatNames seats, TileWords tiles) {
    if (moment instanceof Moment.Pass pass) {
      return PassNames.of(pass.step().text()) + ": which three tiles to pass?";
    } else if (moment instanceof Moment.Stop) {
      return "After the first left: stop the passes, or go on?";
    } else if (moment instanceof Moment.CourtesyAsk) {
      return "Courtesy pass: how many tiles to offer?";
    } else if (moment instanceof Moment.CourtesyGive give) {
      return String.format(
          Locale.ROOT,
          "Courtesy pass: which %s to give?",
          give.number() == 1 ? "tile" : give.number() == 2 ? "two tiles" : "three tiles");
    } else if (moment instanceof Moment.Offer offer) {
      return seats.player(offer.from()).substring(0, 1).toUpperCase(Locale.ROOT)
          + seats.player(offer.from()).substring(1)
          + " throws "
          + tiles.tile(offer.tile())
          + ". Claim it?";
    }
    Moment.Turn turn = (Moment.Turn) moment;
    if (turn.claimed()) {
      return "After the claim: what to throw?";
    }
    return turn.drawn() < 0
        ? "What to do in this turn?"
        : "Drew " + tiles.tile(turn.drawn()) + ". What now?";
  }
}
