package org.tallywall.strategies.hand;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * Judges a rack by distance hand by hand and place by place, without rows of bits: naturals go to
 * singles and pairs first, then to groups; jokers fill what the groups lack.
 */
final class PlainNearness {
  /** The least distance of a living hand. */
  final int least;

  /** The line aimed at. */
  final int aim;

  /** Its ways at the least distance. */
  final int ways;

  private final SeatView view;
  private final List<Near> hands = new ArrayList<>();

  /** A living hand: what it wants of each kind, in groups and not, and how far it is. */
  private record Near(int line, int[] loose, int[] grouped, int away) {
    boolean wants(int kind, int count) {
      return loose[kind] + grouped[kind] >= count;
    }
  }

  PlainNearness(SeatView view) {
    this.view = view;
    ConcreteHands all = view.table().hands();
    List<Exposure> exposures = view.exposures(view.seat());
    int nearest = HandMeter.NONE;
    for (int at = 0; at < all.size(); at++) {
      Line line = all.line(all.lineOf(at));
      if (possible(all.hand(at), line, exposures)) {
        Near hand = measure(all.hand(at), all.lineOf(at), line, exposures);
        if (hand != null) {
          hands.add(hand);
          nearest = Math.min(nearest, hand.away());
        }
      }
    }
    least = nearest;
    aim = findAim(all);
    ways = ways(aim);
  }

  private static boolean possible(ConcreteHand hand, Line line, List<Exposure> exposures) {
    boolean joker = exposures.stream().anyMatch(laid -> laid.jokers() > 0);
    return exposures.isEmpty()
        || (!line.concealed()
            && (!joker || line.terms().jokers())
            && Reach.contains(hand, exposures));
  }

  private Near measure(ConcreteHand hand, int line, Line printed, List<Exposure> exposures) {
    boolean jokers = printed.terms().jokers();
    int[] loose = new int[Tile.NATURALS];
    int[] grouped = new int[Tile.NATURALS];
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      loose[kind] = hand.loose(kind);
      grouped[kind] = hand.total(kind) - hand.loose(kind);
    }
    exposures.forEach(laid -> grouped[laid.kind()] -= laid.size());
    int lacking = 0;
    int jokerPlaces = 0;
    int jokersAtLeast = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int had = obtainable(kind);
      if (had < loose[kind] || (!jokers && had < loose[kind] + grouped[kind])) {
        return null;
      }
      jokersAtLeast += Math.max(0, loose[kind] + grouped[kind] - had);
      int inLoose = Math.min(view.held(kind), loose[kind]);
      int inGroups = Math.min(view.held(kind) - inLoose, grouped[kind]);
      lacking += loose[kind] - inLoose + grouped[kind] - inGroups;
      jokerPlaces += jokers ? grouped[kind] - inGroups : 0;
    }
    boolean dead = jokersAtLeast > obtainable(Tile.JOKER);
    int away = lacking - Math.min(jokerPlaces, view.held(Tile.JOKER));
    return dead ? null : new Near(line, loose, grouped, away);
  }

  private int obtainable(int kind) {
    int gone = kind == Tile.JOKER ? view.discarded(kind) : view.faceUp(kind);
    boolean onOffer = view.offered() == kind && view.offeredBy() != view.seat();
    return view.table().rules().tiles().copies(kind) - gone + (onOffer ? 1 : 0);
  }

  private int findAim(ConcreteHands all) {
    int best = Player.NO_AIM;
    for (int line = 0; line < all.lines(); line++) {
      int here = ways(line);
      boolean more = best == Player.NO_AIM ? here > 0 : here > ways(best);
      boolean dearer =
          best != Player.NO_AIM
              && here == ways(best)
              && all.line(line).value() > all.line(best).value();
      best = more || dearer ? line : best;
    }
    return best;
  }

  private int ways(int line) {
    return (int) hands.stream().filter(h -> h.away() == least && h.line() == line).count();
  }

  /** Whether a nearest hand wants one more of a kind. */
  boolean wantsNow(int kind) {
    return hands.stream().anyMatch(h -> h.away() == least && h.wants(kind, view.held(kind) + 1));
  }

  /** Whether no nearest way of the line aimed at wants the last of a kind that is held. */
  boolean stranger(int kind) {
    return hands.stream()
        .noneMatch(h -> h.away() == least && h.line() == aim && h.wants(kind, view.held(kind)));
  }

  /** Ways that want the last of a kind: of the line aimed at, of others as near, one further. */
  List<Long> wantedBy(int kind, int count) {
    return List.of(
        wanted(kind, count, h -> h.away() == least && h.line() == aim),
        wanted(kind, count, h -> h.away() == least && h.line() != aim),
        wanted(kind, count, h -> h.away() == least + 1));
  }

  private long wanted(int kind, int count, java.util.function.Predicate<Near> which) {
    return hands.stream().filter(which).filter(h -> h.wants(kind, count)).count();
  }
}
