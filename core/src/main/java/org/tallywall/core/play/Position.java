package org.tallywall.core.play;

import java.util.Arrays;
import org.tallywall.core.random.GameStreams;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileSet;

/**
 * A position from which a game can be played on: what one seat knows, and a guess at all that it
 * cannot see. The guess is filled in from outside, and can be filled in again and again.
 *
 * <p>The dice are not known to a view; the guess has them show a one and a two.
 */
public final class Position {
  private final Rack[] racks = new Rack[Seats.COUNT];
  private final GameStreams numbers = new GameStreams();
  private SeatView view;
  private int[] tiles = {};
  private int sample;
  private boolean ownRows;
  private PassMoment passing;

  /** A position that is not set yet. */
  public Position() {
    Arrays.setAll(racks, seat -> new Rack());
  }

  /**
   * Sets what is known. The own rack is taken from the view; the racks of the others are empty.
   *
   * @param seen what the seat knows: asked about a claim, in its own turn, or in the passes
   * @param random the numbers that came with the question; only their seed and deal are taken
   */
  public void begin(SeatView seen, RandomStream random) {
    view = seen;
    passing = null;
    numbers.playOn(random);
    TileSet set = seen.table().rules().tiles();
    if (tiles.length != set.size()) {
      tiles = set.tiles();
    }
    for (Rack rack : racks) {
      rack.clear();
    }
    seen.copyRack(racks[seen.seat()]);
  }

  /**
   * The concealed tiles of a seat, to be filled in.
   *
   * @param seat 0 to 3
   * @return the rack itself
   */
  public Rack rack(int seat) {
    return racks[seat];
  }

  /**
   * Sets a tile of the wall.
   *
   * @param index how many tiles are drawn before it, from 0 to {@link SeatView#wallLeft()} - 1
   * @param tile its kind
   */
  public void wall(int index, int tile) {
    tiles[tiles.length - view.wallLeft() + index] = tile;
  }

  /**
   * A tile of the wall as it was set last.
   *
   * @param index how many tiles are drawn before it, from 0 to {@link SeatView#wallLeft()} - 1
   * @return its kind
   */
  public int wall(int index) {
    return tiles[tiles.length - view.wallLeft() + index];
  }

  /**
   * Sets which of several samples this is; the numbers with which players decide depend on it.
   *
   * @param which from 0
   */
  public void sample(int which) {
    sample = which;
  }

  /**
   * Sets whether each seat draws from a row of the wall that it has for itself, so that games which
   * begin with different choices stay as alike as can be. For guessed walls only: a wall that lies
   * on the table is drawn from in order, which is how positions begin.
   *
   * @param own whether it does
   */
  public void ownRows(boolean own) {
    ownRows = own;
  }

  /**
   * Sets that the position lies before play, in the passes. It stays so until the next {@link
   * #begin}.
   *
   * @param moment where in the passes
   */
  public void passing(PassMoment moment) {
    passing = moment;
  }

  PassMoment passing() {
    return passing;
  }

  boolean ownRows() {
    return ownRows;
  }

  int sample() {
    return sample;
  }

  SeatView view() {
    return view;
  }

  GameStreams numbers() {
    return numbers;
  }

  Deal deal() {
    return Deal.stacked(0, 0, tiles, 1, 2);
  }
}
