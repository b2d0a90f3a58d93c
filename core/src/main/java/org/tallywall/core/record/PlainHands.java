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

  PlainHands(ConcreteHands hands) {
    this.hands = hands;
  }

  /** Indices of all hands that a rack with its exposures is (rule 5.2). */
  List<Integer> complete(Rack rack, List<Exposure> exposures) {
    List<Integer> complete = new ArrayList<>();
    for (int at = 0; at < hands.size(); at++) {
      if (allows(at, exposures) && matches(hands.hand(at), rack, exposures, jokersAllowed(at))) {
        complete.add(at);
      }
    }
    return complete;
  }

  /** Whether some exposable line fits exposures in tile, size and jokers (rule 3.3.8). */
  boolean fits(List<Exposure> exposures) {
    for (int at = 0; at < hands.size(); at++) {
      if (allows(at, exposures)) {
        return true;
      }
    }
    return false;
  }

  /** Whether some concealed line holds the exposures as groups (rule 6.4.3). */
  boolean fitsConcealed(List<Exposure> exposures) {
    for (int at = 0; at < hands.size(); at++) {
      if (line(at).concealed() && rest(hands.hand(at), exposures) != null) {
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
      if (hands.lineOf(at) != last && allows(at, exposures)) {
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
      if (allows(at, exposures) && possible(at, exposures, obtainable)) {
        return false;
      }
    }
    return true;
  }

  private boolean possible(int at, List<Exposure> exposures, int[] obtainable) {
    int[] rest = rest(hands.hand(at), exposures);
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

  private boolean allows(int at, List<Exposure> exposures) {
    if (exposures.isEmpty()) {
      return true;
    }
    boolean joker = exposures.stream().anyMatch(exposure -> exposure.jokers() > 0);
    return !line(at).concealed()
        && (!joker || jokersAllowed(at))
        && rest(hands.hand(at), exposures) != null;
  }

  /** Tiles by kind that a hand has beyond the exposed groups; null where it lacks one of them. */
  private static int[] rest(ConcreteHand hand, List<Exposure> exposures) {
    List<Integer> groups = new ArrayList<>();
    for (int group = 0; group < hand.groups(); group++) {
      groups.add(hand.groupKind(group) * 10 + hand.groupSize(group));
    }
    int[] rest = new int[Tile.NATURALS];
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      rest[kind] = hand.total(kind);
    }
    for (Exposure exposure : exposures) {
      if (!groups.remove(Integer.valueOf(exposure.kind() * 10 + exposure.size()))) {
        return null;
      }
      rest[exposure.kind()] -= exposure.size();
    }
    return rest;
  }

  private static boolean matches(
      ConcreteHand hand, Rack rack, List<Exposure> exposures, boolean jokersAllowed) {
    int[] rest = rest(hand, exposures);
    int open = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int held = rack.held(kind);
      if (held > rest[kind] || held < hand.loose(kind)) {
        return false;
      }
      open += rest[kind] - held;
    }
    return open == rack.jokers() && (jokersAllowed || open == 0);
  }

  private boolean jokersAllowed(int at) {
    return line(at).terms().jokers();
  }

  private Line line(int at) {
    return hands.line(hands.lineOf(at));
  }
}
