package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * What speaks for and against a rack of another player, as numbers: how near it is to which hands,
 * what it holds, and how it fits what she threw, let lie and passed. What each counts for stands in
 * {@link TraitWeights}.
 */
public final class RackTraits {
  private static final int SHOWN = 4;
  private static final int BANDS = 5;
  private static final int FARTHEST = 9;
  private static final int MOST_JOKERS = 4;
  private static final int MOST_LACKS = 24;
  private static final List<String> NAMES = new ArrayList<>();

  private static final int BAND_AWAY = block(BANDS * FARTHEST, "away %s, wall band %s", FARTHEST);
  private static final int SHOWN_AWAY = block(SHOWN * FARTHEST, "away %s, shown %s", FARTHEST);
  private static final int BOTH_AWAY =
      block(SHOWN * BANDS * FARTHEST, "away %s, shown and band %s", FARTHEST);
  private static final int JOKERS = block(SHOWN * (MOST_JOKERS + 1), "jokers %s, shown %s", 5);
  private static final int JOKERS_WALL = one("jokers by the wall");
  private static final int NEAREST = block(2, "logarithm of hands nearest, open %s", 1);
  private static final int USEFUL = block(2, "logarithm of useful kinds, open %s", 1);
  private static final int LIVE = block(2, "logarithm of useful tiles unseen, open %s", 1);
  private static final int PRIOR = block(2, "logarithm of the nearest hand's weight, open %s", 1);
  private static final int VALUE = block(2, "value of the nearest hand, open %s", 1);
  private static final int CONCEALED = block(BANDS, "nearest is concealed, wall band %s", 1);
  private static final int JOKERLESS = one("nearest takes no jokers");
  private static final int LACKS_STRICT = block(3, "lacks %s naturals for pairs and singles", 3);
  private static final int THREW_USEFUL =
      block(Traces.AGES * 2, "threw useful, age and open %s", 1);
  private static final int THREW_HELD = block(Traces.AGES * 2, "threw, holds %s, age %s", 2);
  private static final int WAITED_BY = block(Traces.ROUNDS, "waits for what went by, round %s", 1);
  private static final int USEFUL_BY =
      block(Traces.ROUNDS * 2, "useful went by, round and open %s", 1);
  private static final int CLAIMABLE_BY =
      block(Traces.ROUNDS * 2, "claimable went by, round and open %s", 1);
  private static final int JOKER_BY =
      block(Traces.ROUNDS, "claimable with a joker went by, round %s", 1);
  private static final int HELD_BY = block(Traces.ROUNDS, "holds what went by, round %s", 1);
  private static final int GIVEN_HELD = one("holds what it was given");
  private static final int GIVEN_LATE = one("holds what it was given late");
  private static final int GIVEN_PAIR = one("holds two of what it was given");
  private static final int GIVEN_TWO = one("holds two that it was given");
  private static final int GIVEN_USEFUL = one("useful: given to her");
  private static final int PASSED_HELD = one("holds what she passed");
  private static final int PASSED_LATE = one("holds what she passed late");
  private static final int PASSED_PAIR = one("holds two of what she passed");
  private static final int PASSED_USEFUL = one("useful: passed by her");
  private static final int COPIES = block(4, "kinds held %s times", 4);
  private static final int FLOWERS = block(5, "flowers %s", 5);
  private static final int HONORS =
      block(6, "kinds of winds and dragons held %s times, open %s", 3);
  private static final int HONORS_WANTED =
      block(3, "how much hands want winds and dragons held, copies %s", 3);
  private static final int FLOWERS_WANTED =
      block(2, "flowers by how much hands want them, open %s", 1);
  private static final int JOKERS_WANTED = block(2, "jokers by hands that take them, open %s", 1);
  private static final int WANTED = block(3, "how much hands want what is held, copies %s", 3);
  private static final int STRAYS = block(3, "strays: wanted, honors, up: %s", 3);
  private static final int TELLS = block(10, "distance by tell %s", 10);

  private final Traces traces = new Traces();
  private final HandMeter meter = new HandMeter();
  private final NearHands near = new NearHands();
  private final Lack lack = new Lack();
  private final Rack nothing = new Rack();
  private final int[] obtainable = new int[Tile.KINDS];
  private final int[] unseen = new int[Tile.KINDS];
  private final double[] wanted = new double[Tile.KINDS];
  private final int[] index = new int[NAMES.size()];
  private final double[] value = new double[NAMES.size()];
  private final double[] tells = new double[10];
  private RackProposal proposal;
  private Reach reach;
  private int shown;
  private int open;
  private int band;
  private double wall;
  private int count;
  private long useful;
  private long gave;
  private double takesJokers;
  private long used;
  private long[] kindsOf = {};
  private long letLie;
  private boolean letWinLie;

  /** Traits of nobody yet. */
  public RackTraits() {}

  private static int one(String name) {
    return block(1, name, 1);
  }

  private static int block(int size, String name, int inner) {
    int first = NAMES.size();
    for (int at = 0; at < size; at++) {
      String whole = name.replaceFirst("%s", inner == 1 ? at + "" : at % inner + "");
      NAMES.add(whole.replaceFirst("%s", at / inner + ""));
    }
    return first;
  }

  /**
   * What the traits are called, in their order.
   *
   * @return names, all different
   */
  public static List<String> names() {
    return List.copyOf(NAMES);
  }

  /**
   * Looks at what a seat knows of another.
   *
   * @param view what the seat knows
   * @param seat whose racks are looked at
   * @param proposed the proposal of her racks, which has looked at the same
   */
  public void look(SeatView view, int seat, RackProposal proposed) {
    proposal = proposed;
    reach = view.reach(seat);
    shown = Math.min(SHOWN - 1, view.exposures(seat).size());
    open = shown > 0 ? 1 : 0;
    wall = view.wallLeft() / 100.0;
    band = Math.min(BANDS - 1, view.wallLeft() / 20);
    traces.look(view, seat);
    boolean claimable = view.table().rules().wall().cold() == WallRules.Cold.OFF;
    letLie = claimable ? traces.letLie : 0;
    gave = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      gave |= traces.given[kind] > 0 ? 1L << kind : 0;
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen[kind] = view.unseen(kind);
      obtainable[kind] = view.table().rules().tiles().copies(kind) - view.faceUp(kind);
    }
    obtainable[Tile.JOKER] = view.table().rules().tiles().jokers() - view.discarded(Tile.JOKER);
    meter.obtainable(obtainable);
    wants();
    tells(view);
  }

  /** How much the likely hands want of each kind. */
  private void wants() {
    Arrays.fill(wanted, 0);
    takesJokers = 0;
    if (kindsOf.length < reach.size()) {
      kindsOf = new long[reach.size()];
    }
    meter.hold(nothing);
    double sum = 0;
    for (int hand = 0; hand < reach.size(); hand++) {
      double share = proposal.any() ? proposal.share(hand) : 0;
      meter.lack(reach, hand, lack);
      kindsOf[hand] = 0;
      takesJokers += reach.hands().line(reach.line(hand)).terms().jokers() ? share : 0;
      for (int at = 0; at < lack.kinds(); at++) {
        kindsOf[hand] |= 1L << lack.kind(at);
        wanted[lack.kind(at)] += share;
        sum += share;
      }
    }
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      double times = sum > 0 ? wanted[kind] * Tile.NATURALS / sum : 1;
      wanted[kind] = StrictMath.log(0.05 + times);
    }
  }

  private void tells(SeatView view) {
    tells[0] = traces.stopped ? 1 : 0;
    tells[1] = traces.blind;
    tells[2] = traces.courtesy >= 0 && traces.courtesy < 3 ? 3 - traces.courtesy : 0;
    tells[3] = traces.redeemed;
    tells[4] = traces.threwJoker ? 1 : 0;
    tells[5] = traces.threwFlower ? 1 : 0;
    int thrown = Math.max(1, traces.freshThrown + traces.staleThrown);
    tells[6] = traces.freshThrown / (double) thrown;
    tells[7] = traces.freshThrown + traces.staleThrown == 0 ? 1 : 0;
    tells[8] = (traces.threw[0] & traces.twiceUp) != 0 ? 1 : 0;
    tells[9] = wall * tells[6];
  }

  /**
   * Works out the traits of a rack.
   *
   * @param rack her concealed tiles
   */
  public void of(Rack rack) {
    count = 0;
    meter.hold(rack);
    meter.nearest(reach, 0, near);
    int away = near.count() == 0 ? FARTHEST - 1 : Math.min(FARTHEST - 1, near.least());
    add(BAND_AWAY + band * FARTHEST + away, 1);
    add(SHOWN_AWAY + shown * FARTHEST + away, 1);
    add(BOTH_AWAY + (shown * BANDS + band) * FARTHEST + away, 1);
    int jokers = Math.min(MOST_JOKERS, rack.jokers());
    add(JOKERS + shown * (MOST_JOKERS + 1) + jokers, 1);
    add(JOKERS_WALL, jokers * wall);
    for (int tell = 0; tell < tells.length; tell++) {
      add(TELLS + tell, tells[tell] * away);
    }
    nearHands();
    evidence(rack, away);
    holdings(rack);
    letWinLie = near.count() > 0 && near.least() == 1 && (useful & letLie) != 0;
  }

  /**
   * Whether the rack would have been mahjong with a discard that she let lie since she threw her
   * last tile, so with the very rack she has now.
   *
   * @return true if so; never by rules under which such a discard may not be claimed at the end
   */
  public boolean letWinLie() {
    return letWinLie;
  }

  private void nearHands() {
    useful = 0;
    used = 0;
    if (near.count() == 0) {
      return;
    }
    double best = -1;
    int nearest = 0;
    int strict = MOST_LACKS;
    int looked = Math.min(MOST_LACKS, near.count());
    for (int at = 0; at < looked; at++) {
      int hand = near.hand(at);
      meter.lack(reach, hand, lack);
      boolean strictOnly = lack.naturals() >= near.least();
      for (int lacking = 0; lacking < lack.kinds(); lacking++) {
        useful |= !strictOnly || lack.natural(lacking) > 0 ? 1L << lack.kind(lacking) : 0;
      }
      double share = proposal.any() ? proposal.share(hand) : 0;
      if (share > best) {
        best = share;
        nearest = hand;
        strict = lack.naturals();
      }
    }
    int live = 0;
    for (long kinds = useful; kinds != 0; kinds &= kinds - 1) {
      live += unseen[Long.numberOfTrailingZeros(kinds)];
    }
    used = kindsOf[nearest];
    Line line = reach.hands().line(reach.line(nearest));
    add(NEAREST + open, StrictMath.log(near.count()));
    add(USEFUL + open, StrictMath.log(1.0 + Long.bitCount(useful)));
    add(LIVE + open, StrictMath.log(1.0 + live));
    add(PRIOR + open, StrictMath.log(1e-3 + Math.max(0, best) * reach.size()));
    add(VALUE + open, line.value() / 25.0 - 1);
    add(CONCEALED + band, line.concealed() ? 1 : 0);
    add(JOKERLESS, line.terms().jokers() ? 0 : 1);
    add(LACKS_STRICT + Math.min(2, strict), 1);
  }

  private void evidence(Rack rack, int away) {
    long kinds = rack.kinds();
    for (int age = 0; age < Traces.AGES; age++) {
      add(THREW_USEFUL + 2 * age + open, Long.bitCount(traces.threw[age] & useful));
      long held = traces.threw[age] & kinds;
      add(THREW_HELD + 2 * age, Long.bitCount(held));
      add(THREW_HELD + 2 * age + 1, Long.bitCount(held & atLeast(rack, held, 2)));
    }
    for (int round = 0; round < Traces.ROUNDS; round++) {
      long useless = traces.wentBy[round];
      add(WAITED_BY + round, away == 1 ? Long.bitCount(useless & useful) : 0);
      add(USEFUL_BY + 2 * round + open, away > 1 ? Long.bitCount(useless & useful) : 0);
      long held = useless & kinds & ~(1L << Tile.JOKER);
      long pairs = held & atLeast(rack, held, 2);
      add(CLAIMABLE_BY + 2 * round + open, Long.bitCount(pairs & useful));
      add(JOKER_BY + round, rack.jokers() > 0 ? Long.bitCount(held & ~pairs & useful) : 0);
      add(HELD_BY + round, Long.bitCount(held));
    }
    int given = 0;
    int late = 0;
    int two = 0;
    long kept = gave & kinds;
    for (long held = kept; held != 0; held &= held - 1) {
      int kind = Long.numberOfTrailingZeros(held);
      given += Math.min(rack.held(kind), traces.given[kind]);
      late += Math.min(rack.held(kind), traces.givenLate[kind]);
      two += traces.given[kind] > 1 && rack.held(kind) > 1 ? 1 : 0;
    }
    add(GIVEN_HELD, given);
    add(GIVEN_LATE, late);
    add(GIVEN_PAIR, Long.bitCount(atLeast(rack, kept, 2)));
    add(GIVEN_TWO, two);
    long back = traces.passed & kinds;
    add(PASSED_HELD, Long.bitCount(back));
    add(PASSED_LATE, Long.bitCount(traces.passedLate & kinds));
    add(PASSED_PAIR, Long.bitCount(atLeast(rack, back, 2)));
    add(PASSED_USEFUL, Long.bitCount(traces.passed & useful));
    add(GIVEN_USEFUL, Long.bitCount(gave & useful & ~kinds));
  }

  private static long atLeast(Rack rack, long among, int copies) {
    long found = 0;
    for (long kinds = among; kinds != 0; kinds &= kinds - 1) {
      int kind = Long.numberOfTrailingZeros(kinds);
      found |= rack.held(kind) >= copies ? 1L << kind : 0;
    }
    return found;
  }

  private void holdings(Rack rack) {
    int[] copies = new int[4];
    int[] honors = new int[3];
    double[] wants = new double[3];
    double[] strays = new double[3];
    double[] honorWants = new double[3];
    for (long kinds = rack.kinds() & ~(1L << Tile.JOKER); kinds != 0; kinds &= kinds - 1) {
      int kind = Long.numberOfTrailingZeros(kinds);
      int held = rack.held(kind);
      copies[Math.min(4, held) - 1]++;
      wants[Math.min(3, held) - 1] += wanted[kind];
      boolean honor = kind >= Tile.NORTH && kind < Tile.FLOWER;
      if (honor) {
        honors[Math.min(3, held) - 1]++;
        honorWants[Math.min(3, held) - 1] += wanted[kind];
      }
      if ((used >>> kind & 1) == 0) {
        strays[0] += wanted[kind];
        strays[1] += honor ? 1 : 0;
        strays[2] += (traces.twiceUp >>> kind & 1) + (traces.thriceUp >>> kind & 1);
      }
    }
    for (int at = 0; at < copies.length; at++) {
      add(COPIES + at, copies[at]);
    }
    for (int at = 0; at < honors.length; at++) {
      add(HONORS + 3 * open + at, honors[at]);
      add(HONORS_WANTED + at, honorWants[at]);
      add(WANTED + at, wants[at]);
      add(STRAYS + at, strays[at]);
    }
    add(FLOWERS_WANTED + open, rack.held(Tile.FLOWER) * wanted[Tile.FLOWER]);
    add(JOKERS_WANTED + open, rack.jokers() * (takesJokers - 0.9));
    add(FLOWERS + Math.min(4, rack.held(Tile.FLOWER)), 1);
  }

  private void add(int at, double amount) {
    if (amount != 0) {
      index[count] = at;
      value[count++] = amount;
    }
  }

  /**
   * How many traits of the rack are not 0.
   *
   * @return 0 or more
   */
  public int count() {
    return count;
  }

  /**
   * One of the traits that are not 0.
   *
   * @param at from 0
   * @return its place among all
   */
  public int index(int at) {
    return index[at];
  }

  /**
   * The value of one of the traits that are not 0.
   *
   * @param at from 0
   * @return not 0
   */
  public double value(int at) {
    return value[at];
  }

  /**
   * How many tiles the rack is away from its nearest living hand.
   *
   * @return 0 to 14, or {@link HandMeter#NONE}
   */
  public int away() {
    return near.least();
  }
}
