package org.tallywall.experiments.run;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLongArray;
import org.tallywall.core.play.Player;

/**
 * Shows from outside whether the players at one table still answer. The table's thread writes a
 * number before and after each question, without a lock and without looking at a clock; another
 * thread looks whether it moves.
 */
public final class Pulse {
  private static final int SEAT_BITS = 2;

  /** Numbers left empty around the beat, so that no other thread's lies in its cache line. */
  private static final int APART = 16;

  private static final int STEP = 1 << SEAT_BITS + 1;

  /** Bit 0: a question is open; bits 1 and 2: the seat asked; above: a count of questions. */
  private final AtomicLongArray beat = new AtomicLongArray(2 * APART);

  private volatile GamePlace game = new GamePlace(0, 0, "", GamePlace.ALL);

  /** A table at which nothing was asked yet. */
  public Pulse() {}

  /**
   * A game begins.
   *
   * @param place which one
   */
  public void begins(GamePlace place) {
    answered();
    game = place;
  }

  /**
   * The game begun last.
   *
   * @return which one
   */
  public GamePlace game() {
    return game;
  }

  /**
   * Players that answer as those given, and show in this pulse that they do.
   *
   * @param players the players of one table, East first
   * @return as many
   */
  public List<Player> watched(List<? extends Player> players) {
    List<Player> watched = new ArrayList<>();
    for (int seat = 0; seat < players.size(); seat++) {
      watched.add(new PulsePlayer(players.get(seat), this, seat));
    }
    return watched;
  }

  /**
   * The player that a question is open to.
   *
   * @return its seat, 0 to 3; of no use where nothing was asked yet
   */
  public int seat() {
    return seat(beat());
  }

  /**
   * A player that answers as one given, and shows in this pulse that it does.
   *
   * @param player the player
   * @param seat its seat, 0 to 3
   * @return one in front of it
   */
  public Player watched(Player player, int seat) {
    return new PulsePlayer(player, this, seat);
  }

  void asks(int seat) {
    long count = beat.getPlain(APART) & -STEP;
    beat.setOpaque(APART, count + STEP | (long) seat << 1 | 1);
  }

  /** No question is open, be it because the player broke down. */
  void answered() {
    beat.setOpaque(APART, beat.getPlain(APART) & ~1L);
  }

  /** A number that changes with each question and each answer. */
  long beat() {
    return beat.getOpaque(APART);
  }

  static boolean isOpen(long beat) {
    return (beat & 1) != 0;
  }

  static int seat(long beat) {
    return (int) (beat >> 1) & (1 << SEAT_BITS) - 1;
  }
}
