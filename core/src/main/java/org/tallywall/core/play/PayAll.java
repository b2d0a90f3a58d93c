package org.tallywall.core.play;

import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;

/**
 * When a discarder pays for the whole table: after a hot tile from the last wall (7.4), or when the
 * winner's exposures left one line only (8.9). Both are house rules.
 */
final class PayAll {
  private static final int OTHERS_OF_FOUR = 3;

  private PayAll() {}

  /**
   * Whether the discarder pays for all.
   *
   * @param state the game at the moment of the win
   * @param winner who won
   * @param discarder who threw the winning tile
   * @return true if so
   */
  static boolean applies(GameState state, int winner, int discarder) {
    TableRules rules = state.setup.rules();
    boolean hot = rules.wall().hot() && state.inLastWall() && hot(state, discarder);
    boolean oneHand =
        rules.score().oneHand()
            && !state.exposures(winner).isEmpty()
            && state.reach(winner).lines() == 1;
    return hot || oneHand;
  }

  private static boolean hot(GameState state, int discarder) {
    int tile = state.lastThrown;
    if (tile == Tile.JOKER) {
      return false;
    }
    int needed = tile == Tile.FLOWER ? state.setup.rules().wall().hotFlowerNeeds() : OTHERS_OF_FOUR;
    int accounted = state.faceUp(tile) - 1 + state.racks[discarder].held(tile);
    return accounted < needed;
  }
}
