package org.tallywall.core.play;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import org.tallywall.core.random.RandomStream;

/**
 * Works out where the tiles of one pass go, blind ones included (rules 2.3.7 to 2.3.10). Which
 * incoming tiles go on is drawn from the passer's stream for blind passes. No tile moves yet.
 */
final class BlindPasses {
  private static final int TILES = 3;

  private final GameState state;
  private final PassStep step;
  private final PassChoice[] choices;
  private final List<List<Integer>> forwarded = new ArrayList<>();
  private final List<List<Integer>> received = new ArrayList<>();

  /**
   * Works a pass out.
   *
   * @param state the game
   * @param step the pass
   * @param choices what each seat sets out
   */
  BlindPasses(GameState state, PassStep step, PassChoice[] choices) {
    this.state = state;
    this.step = step;
    this.choices = choices;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      forwarded.add(new ArrayList<>());
      received.add(new ArrayList<>());
    }
    boolean[] done = new boolean[Seats.COUNT];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (!done[seat]) {
        int[] circle = circle(seat);
        for (int member : circle) {
          done[member] = true;
        }
        resolve(circle);
      }
    }
    for (List<Integer> tiles : received) {
      Collections.sort(tiles);
    }
  }

  /** The seats among which tiles go round: all four, or two across. */
  private int[] circle(int start) {
    int[] circle = new int[step.to(step.to(start)) == start ? 2 : Seats.COUNT];
    circle[0] = start;
    for (int at = 1; at < circle.length; at++) {
      circle[at] = step.to(circle[at - 1]);
    }
    return circle;
  }

  private void resolve(int[] circle) {
    int first = -1;
    for (int seat : circle) {
      if (choices[seat].blind() == 0 && (first < 0 || seat < first)) {
        first = seat;
      }
    }
    if (first >= 0) {
      goRound(first);
    } else {
      payDebts(circle);
    }
  }

  /** Starts at a seat that passes nothing blind, so each seat's incoming tiles are known. */
  private void goRound(int first) {
    int[] tiles = choices[first].own();
    for (int seat = step.to(first); seat != first; seat = step.to(seat)) {
      tiles = passOn(seat, tiles);
    }
    for (int tile : tiles) {
      received.get(first).add(tile);
    }
  }

  private int[] passOn(int seat, int[] incoming) {
    int blind = choices[seat].blind();
    int[] mixed = incoming.clone();
    if (blind > 0 && blind < TILES) {
      blind(seat).shuffle(mixed, mixed.length);
    }
    int[] out = new int[TILES];
    for (int at = 0; at < TILES; at++) {
      if (at < blind) {
        forwarded.get(seat).add(mixed[at]);
        out[at] = mixed[at];
      } else {
        received.get(seat).add(mixed[at]);
      }
    }
    System.arraycopy(choices[seat].own(), 0, out, blind, TILES - blind);
    return out;
  }

  /** Hands on what there is and owes the rest until tiles arrive (rule 2.3.9). */
  private void payDebts(int[] circle) {
    List<Deque<Integer>> queues = new ArrayList<>();
    int[] debt = new int[circle.length];
    for (int at = 0; at < circle.length; at++) {
      queues.add(new ArrayDeque<>());
      debt[at] = choices[circle[at]].blind();
    }
    for (int at = 0; at < circle.length; at++) {
      int[] own = choices[circle[at]].own().clone();
      blind(circle[at]).shuffle(own, own.length);
      for (int tile : own) {
        queues.get((at + 1) % circle.length).add(tile);
      }
    }
    boolean moved = true;
    while (moved) {
      moved = false;
      for (int at = 0; at < circle.length; at++) {
        Integer tile = queues.get(at).poll();
        if (tile != null && debt[at] > 0) {
          debt[at]--;
          forwarded.get(circle[at]).add(tile);
          queues.get((at + 1) % circle.length).add(tile);
        } else if (tile != null) {
          received.get(circle[at]).add(tile);
        }
        moved |= tile != null;
      }
    }
  }

  private RandomStream blind(int seat) {
    return state.blind(step, seat);
  }

  /** Kinds that a seat passed on unseen, in the order in which they went. */
  int[] forwarded(int seat) {
    int[] kinds = new int[forwarded.get(seat).size()];
    for (int at = 0; at < kinds.length; at++) {
      kinds[at] = forwarded.get(seat).get(at);
    }
    return kinds;
  }

  /** Kinds that a seat got and kept, ascending. */
  List<Integer> received(int seat) {
    return List.copyOf(received.get(seat));
  }
}
