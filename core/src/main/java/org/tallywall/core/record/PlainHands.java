package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Matches tiles with hands of the card tile by tile, without the bit rows and distances that the
 * engine plays by, so that each can be checked against the other.
 */
final class PlainHands {
  private final ConcreteHands hands;

  /** For each hand, how many tiles of each natural kind it has. */
  private final int[][] totals;

  PlainHands(ConcreteHands hands) {
    this.hands = hands;
    totals = new int[hands.size()][Tile.NATURALS];
    for (int at = 0; at < totals.length; at++) {
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        totals[at][kind] = hands.hand(at).total(kind);
      }
    }
  }

  /** The card's hands. */
  ConcreteHands hands() {
    return hands;
  }

  /** Indices of all hands that a rack with its exposures is (rule 5.2). */
  List<Integer> complete(Rack rack, List<Exposure> exposures) {
    List<Integer> complete = new ArrayList<>();
    for (int at = 0; at < hands.size(); at++) {
      int[] rest = allowed(at, exposures);
      if (rest != null && matches(at, rack, rest)) {
        complete.add(at);
      }
    }
    return complete;
  }

  /** Whether some exposable line fits exposures in tile, size and jokers (rule 3.3.8). */
  boolean fits(List<Exposure> exposures) {
    for (int at = 0; at < hands.size(); at++) {
      if (allowed(at, exposures) != null) {
        return true;
      }
    }
    return false;
  }

  /** Whether some concealed line holds the exposures as groups (rule 6.4.3). */
  boolean fitsConcealed(List<Exposure> exposures) {
    for (int at = 0; at < hands.size(); at++) {
      if (line(at).concealed() && rest(at, exposures) != null) {
        return true;
      }
    }
    return false;
  }

  /** How many lines fit exposures. */
  int lines(List<Exposure> exposures) {
    int lines = 0;
    int last = -1;
    for (int at = 0; at < hands.size(); at++) {
      if (hands.lineOf(at) != last && allowed(at, exposures) != null) {
        last = hands.lineOf(at);
        lines++;
      }
    }
    return lines;
  }

  /**
   * Whether no fitting hand can be made of what all can see to be left (rule 6.2.3).
   *
   * @param obtainable how many of each kind can still be had, jokers in exposures included
   */
  boolean impossible(List<Exposure> exposures, int[] obtainable) {
    for (int at = 0; at < hands.size(); at++) {
      int[] rest = allowed(at, exposures);
      if (rest != null && possible(at, rest, obtainable)) {
        return false;
      }
    }
    return true;
  }

  private boolean possible(int at, int[] rest, int[] obtainable) {
    int lacking = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int left = obtainable[kind];
      int natural = jokersAllowed(at) ? hands.hand(at).loose(kind) : rest[kind];
      if (natural > left) {
        return false;
      }
      lacking += Math.max(0, rest[kind] - left);
    }
    return lacking <= obtainable[Tile.JOKER];
  }

  /** Tiles by kind that a hand has beyond exposures; null where they rule it out (3.3.8). */
  private int[] allowed(int at, List<Exposure> exposures) {
    boolean barred =
        !exposures.isEmpty()
            && (line(at).concealed() || (!jokersAllowed(at) && anyJoker(exposures)));
    return barred ? null : rest(at, exposures);
  }

  private static boolean anyJoker(List<Exposure> exposures) {
    for (Exposure exposure : exposures) {
      if (exposure.jokers() > 0) {
        return true;
      }
    }
    return false;
  }

  /** Tiles by kind that a hand has beyond the exposed groups; null where it lacks one of them. */
  private int[] rest(int at, List<Exposure> exposures) {
    if (exposures.isEmpty()) {
      return totals[at];
    }
    for (Exposure exposure : exposures) {
      if (totals[at][exposure.kind()] < exposure.size()) {
        return null;
      }
    }
    ConcreteHand hand = hands.hand(at);
    boolean[] taken = new boolean[hand.groups()];
    int[] rest = totals[at].clone();
    for (Exposure exposure : exposures) {
      int group = 0;
      while (group < taken.length && (taken[group] || !shows(hand, group, exposure))) {
        group++;
      }
      if (group == taken.length) {
        return null;
      }
      taken[group] = true;
      rest[exposure.kind()] -= exposure.size();
    }
    return rest;
  }

  private static boolean shows(ConcreteHand hand, int group, Exposure exposure) {
    return hand.groupKind(group) == exposure.kind() && hand.groupSize(group) == exposure.size();
  }

  private boolean matches(int at, Rack rack, int[] rest) {
    int open = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int held = rack.held(kind);
      if (held > rest[kind] || held < hands.hand(at).loose(kind)) {
        return false;
      }
      open += rest[kind] - held;
    }
    return open == rack.jokers() && (jokersAllowed(at) || open == 0);
  }

  private boolean jokersAllowed(int at) {
    return line(at).terms().jokers();
  }

  private Line line(int at) {
    return hands.line(hands.lineOf(at));
  }
}
