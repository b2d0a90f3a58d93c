package org.tallywall.strategies.reason;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** What a view says, worked out hand by hand and place by place as the notation defines it. */
final class PlainFacts {
  static final int NONE = 99;

  private final ConcreteHands hands;
  private final TileSet set;
  private final Map<Integer, Integer> leasts = new TreeMap<>();
  final int[] held = new int[Tile.KINDS];
  final int[] out = new int[Tile.KINDS];
  final List<Exposure> own;

  /** The tiles of a seat, and what lies on the table, as they are. */
  PlainFacts(SeatView view) {
    hands = view.table().hands();
    set = view.table().rules().tiles();
    own = new ArrayList<>(view.exposures(view.seat()));
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      held[kind] = view.held(kind);
      out[kind] = kind == Tile.JOKER ? view.discarded(kind) : view.faceUp(kind);
    }
  }

  /** The least distance to a line, or to any where it is negative; worked out once for each. */
  int least(int line) {
    return leasts.computeIfAbsent(line, this::work);
  }

  private int work(int line) {
    int least = NONE;
    for (int hand = 0; hand < hands.size(); hand++) {
      if ((line < 0 || hands.lineOf(hand) == line) && possible(hand, own)) {
        int away = away(hand);
        if (away < least && !dead(hand)) {
          least = away;
        }
      }
    }
    return least;
  }

  boolean possible(int hand, List<Exposure> exposures) {
    if (exposures.isEmpty()) {
      return true;
    }
    Line line = hands.line(hands.lineOf(hand));
    boolean joker = exposures.stream().anyMatch(exposure -> exposure.jokers() > 0);
    if (line.concealed() || (joker && !line.terms().jokers())) {
      return false;
    }
    List<String> groups = new ArrayList<>();
    ConcreteHand concrete = hands.hand(hand);
    for (int at = 0; at < concrete.groups(); at++) {
      groups.add(concrete.groupKind(at) + "x" + concrete.groupSize(at));
    }
    return exposures.stream()
        .allMatch(exposure -> groups.remove(exposure.kind() + "x" + exposure.size()));
  }

  /** Tiles of a kind that a hand still wants beside the exposures. */
  int rest(int hand, int kind, List<Exposure> exposures) {
    int rest = hands.hand(hand).total(kind);
    for (Exposure exposure : exposures) {
      rest -= exposure.kind() == kind ? exposure.size() : 0;
    }
    return rest;
  }

  int strict(int hand, int kind, List<Exposure> exposures) {
    boolean jokers = hands.line(hands.lineOf(hand)).terms().jokers();
    return jokers ? hands.hand(hand).loose(kind) : rest(hand, kind, exposures);
  }

  int away(int hand) {
    int matched = 0;
    int missing = 0;
    int wanted = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int rest = rest(hand, kind, own);
      wanted += rest;
      matched += Math.min(held[kind], rest);
      missing += Math.max(0, strict(hand, kind, own) - held[kind]);
    }
    boolean jokers = hands.line(hands.lineOf(hand)).terms().jokers();
    return Math.max(missing, wanted - matched - (jokers ? held[Tile.JOKER] : 0));
  }

  boolean dead(int hand) {
    return lacking(hand) >= 0
        || jokersWanted(hand, own, obtainable()) > set.jokers() - out[Tile.JOKER];
  }

  int[] obtainable() {
    int[] can = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      can[kind] = set.copies(kind) - out[kind];
    }
    return can;
  }

  /** The first kind of which too few naturals are left for a single or a pair, or -1. */
  int lacking(int hand) {
    int[] can = obtainable();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (strict(hand, kind, own) > can[kind]) {
        return kind;
      }
    }
    return -1;
  }

  /**
   * What a hand is missing, tile by tile; jokers for what is in no set of tiles. Where the jokers
   * held fill all that they may stand for, only what must be natural.
   */
  List<Integer> missing(int hand) {
    List<Integer> missing = new ArrayList<>();
    List<Integer> natural = new ArrayList<>();
    int over = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int rest = rest(hand, kind, own);
      int there = Math.min(rest, usual(kind));
      over += rest - there;
      for (int copy = held[kind]; copy < there; copy++) {
        missing.add(kind);
      }
      for (int copy = held[kind]; copy < strict(hand, kind, own); copy++) {
        natural.add(kind);
      }
    }
    for (int joker = 0; joker < over; joker++) {
      missing.add(Tile.JOKER);
    }
    return held[Tile.JOKER] < missing.size() - natural.size() ? missing : natural;
  }

  private static int usual(int kind) {
    return kind == Tile.FLOWER ? 8 : 4;
  }

  /** How many lines have a hand that can still be made. */
  int lines() {
    int lines = 0;
    for (int line = 0; line < hands.lines(); line++) {
      lines += least(line) < NONE ? 1 : 0;
    }
    return lines;
  }

  private int jokersWanted(int hand, List<Exposure> exposures, int[] can) {
    int wanted = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      wanted += Math.max(0, rest(hand, kind, exposures) - can[kind]);
    }
    return wanted;
  }

  int inView(int kind) {
    return out[kind] + held[kind];
  }

  int total() {
    int total = own.stream().mapToInt(Exposure::size).sum();
    for (int copies : held) {
      total += copies;
    }
    return total;
  }

  /** The lines left to another seat, and whether one of their hands wants a tile. */
  record Left(int lines, boolean wanted) {}

  Left left(List<Exposure> hers, int tile) {
    int[] can = obtainable();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      can[kind] -= held[kind];
    }
    can[tile]++;
    List<Integer> lines = new ArrayList<>();
    boolean wanted = false;
    for (int hand = 0; hand < hands.size(); hand++) {
      if (possible(hand, hers) && canBeHad(hand, hers, can)) {
        if (!lines.contains(hands.lineOf(hand))) {
          lines.add(hands.lineOf(hand));
        }
        wanted |= rest(hand, tile, hers) > 0;
      }
    }
    return new Left(lines.size(), wanted);
  }

  private boolean canBeHad(int hand, List<Exposure> hers, int[] can) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (strict(hand, kind, hers) > can[kind]) {
        return false;
      }
    }
    int jokers = set.jokers() - out[Tile.JOKER] - held[Tile.JOKER];
    return jokersWanted(hand, hers, can) <= jokers;
  }
}
