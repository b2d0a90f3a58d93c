package org.tallywall.core.play;

import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Tile;

/**
 * When a discarder pays for the whole table: after a hot tile from the last wall (7.4), or when the
 * winner's exposures left one line only (8.9). Both are house rules.
 */
final class PayAll {
  private static final int OTHERS_OF_FOUR = 3;

  private PayAll() {}

  /**
   * Whether the discarder pays for all, asked while the tile is on offer: what the winner lays open
   * with it is no warning that the discarder had.
   *
   * @param state the game, with a tile on offer
   * @param winner who claims it
   * @return true if so
   */
  static boolean applies(GameState state, int winner) {
    boolean oneHand =
        state.setup.rules().score().oneHand()
            && !state.exposures(winner).isEmpty()
            && state.reach(winner).lines() == 1;
    return state.hotDiscard || oneHand;
  }

  /**
   * Whether the tile just thrown is hot: the discarder cannot account for all its other copies.
   *
   * @param state the game right after the discard
   * @return true if so, at a table that plays so and in the last wall
   */
  static boolean hot(GameState state) {
    WallRules wall = state.setup.rules().wall();
    int tile = state.offered;
    if (!wall.hot() || !state.inLastWall() || tile == Tile.JOKER) {
      return false;
    }
    int needed = tile == Tile.FLOWER ? wall.hotFlowerNeeds() : OTHERS_OF_FOUR;
    int accounted = state.faceUp(tile) - 1 + state.racks[state.offeredBy].held(tile);
    return accounted < needed;
  }
}
