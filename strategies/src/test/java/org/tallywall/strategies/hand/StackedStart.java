package org.tallywall.strategies.hand;

import java.util.HashMap;
import java.util.Map;

/**
 * The exact chance of one seat to win from a stacked start: East holds two tiles of each of four
 * groups of three, one tile of the pair and five tiles of no use, and has thrown one of them; the
 * three others throw what they draw and never claim. East keeps what it can use and every joker,
 * claims the third tile of a group and the winning tile, and lays no joker open before it wins.
 * Every new tile is any of those unseen, since nothing is told of closed racks: the sum goes over
 * what is known after each tile of the wall.
 */
final class StackedStart {
  private static final int UNSEEN = 138;
  private static final int WALL = 99;

  private final boolean jokers;

  /** What was worked out before. */
  private final Map<State, Double> known = new HashMap<>();

  /**
   * What is known before a draw.
   *
   * @param drawn tiles drawn from the wall
   * @param seat who draws; 0 is East
   * @param groups groups that lack their third tile
   * @param pair whether the pair lacks its second
   * @param pairLeft tiles of the pair unseen
   * @param held jokers held
   * @param jokersLeft jokers unseen
   */
  private record State(
      int drawn, int seat, int groups, boolean pair, int pairLeft, int held, int jokersLeft) {
    int unseen() {
      return UNSEEN - drawn;
    }

    /** Two tiles of each group that lacks one are unseen. */
    int inGroups() {
      return 2 * groups;
    }

    /** Tiles that change nothing. */
    int rest() {
      return unseen() - inGroups() - pairLeft - jokersLeft;
    }

    boolean complete() {
      return !pair && groups <= held;
    }

    State drew(int groupsNow, boolean pairNow, int ofPair, int heldNow, int ofJokers) {
      return new State(
          drawn + 1,
          (seat + 1) % 4,
          groupsNow,
          pairNow,
          pairLeft - ofPair,
          heldNow,
          jokersLeft - ofJokers);
    }

    State nothing(int ofPair, int ofJokers) {
      return drew(groups, pair, ofPair, held, ofJokers);
    }

    /** East claims a third tile; the seat after it draws next. */
    State called() {
      return new State(drawn + 1, 1, groups - 1, pair, pairLeft, held, jokersLeft);
    }
  }

  StackedStart(boolean jokers) {
    this.jokers = jokers;
  }

  /** The chance to win before the wall runs out. */
  double win() {
    return win(new State(0, 1, 4, true, 3, 0, 8));
  }

  private double win(State at) {
    if (at.drawn() == WALL) {
      return 0;
    }
    Double before = known.get(at);
    if (before == null) {
      before = at.seat() == 0 ? own(at) : others(at);
      known.put(at, before);
    }
    return before;
  }

  private double own(State at) {
    double sum = 0;
    if (at.groups() > 0) {
      sum += at.inGroups() * to(at.drew(at.groups() - 1, at.pair(), 0, at.held(), 0));
    }
    if (at.pairLeft() > 0) {
      sum += at.pairLeft() * to(at.drew(at.groups(), false, 1, at.held(), 0));
    }
    if (at.jokersLeft() > 0) {
      int held = jokers ? at.held() + 1 : 0;
      sum += at.jokersLeft() * to(at.drew(at.groups(), at.pair(), 0, held, 1));
    }
    return (sum + at.rest() * win(at.nothing(0, 0))) / at.unseen();
  }

  private double others(State at) {
    double sum = 0;
    if (at.groups() > 0) {
      sum += at.inGroups() * to(at.called());
    }
    if (at.pairLeft() > 0) {
      boolean wins = at.pair() && at.groups() <= at.held();
      sum += at.pairLeft() * (wins ? 1 : win(at.nothing(1, 0)));
    }
    if (at.jokersLeft() > 0) {
      sum += at.jokersLeft() * win(at.nothing(0, 1));
    }
    return (sum + at.rest() * win(at.nothing(0, 0))) / at.unseen();
  }

  private double to(State next) {
    return next.complete() ? 1 : win(next);
  }
}
