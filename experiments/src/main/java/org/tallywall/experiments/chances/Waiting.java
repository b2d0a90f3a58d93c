package org.tallywall.experiments.chances;

/**
 * Waiting for tiles that are still unseen, each as likely in the wall as in another player's rack.
 *
 * @param outs the unseen tiles that would do, 0 or more
 * @param wall the tiles left in the wall, 0 or more
 * @param hidden the tiles in other players' racks that nobody has seen, 0 or more
 * @param draws the draws that are left to you, 0 to {@code wall}
 */
public record Waiting(int outs, int wall, int hidden, int draws) {
  /**
   * Takes the numbers.
   *
   * @param outs the unseen tiles that would do
   * @param wall the tiles left in the wall
   * @param hidden the tiles in other racks
   * @param draws your draws
   * @throws IllegalArgumentException if they do not fit each other
   */
  public Waiting {
    if (wall < 0 || hidden < 0 || draws < 0 || draws > wall || outs < 0 || outs > wall + hidden) {
      throw new IllegalArgumentException(
          "%s outs and %s draws do not fit %s tiles in the wall and %s in racks"
              .formatted(outs, draws, wall, hidden));
    }
  }

  /**
   * All tiles that you have not seen.
   *
   * @return those of the wall and of the other racks
   */
  public int unseen() {
    return wall + hidden;
  }

  /**
   * The chance that you draw one of them yourself.
   *
   * @return 0 to 1
   */
  public double youDraw() {
    return atLeastOne(draws);
  }

  /**
   * The chance that one of them lies in the wall, so that somebody draws it if the game lasts.
   *
   * @return 0 to 1, at least {@link #youDraw()}
   */
  public double anybodyDraws() {
    return atLeastOne(wall);
  }

  private double atLeastOne(int tiles) {
    return unseen() == 0 ? 0 : new TilesDrawn(unseen(), outs, tiles).atLeast(1);
  }
}
