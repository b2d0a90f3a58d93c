package org.tallywall.strategies.guess;

import java.util.Arrays;
import java.util.function.ToDoubleFunction;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Proposes racks for a seat: a hand she may head for, a number of jokers, how many tiles she is
 * away from that hand, and then any rack like that out of the tiles left, all equally likely.
 *
 * <p>What is proposed is a hand together with a rack, and the density of both is known up to a
 * constant. So a rack can be weighed exactly, whatever was taken out of the tiles before: by the
 * number of such racks that the tiles left allow, divided by the number that all unseen tiles
 * would.
 */
public final class RackProposal {
  private static final int MOST_AWAY = 10;
  private static final int MOST_JOKERS = 8;
  private static final int MOST_SERVING = 14;

  /** Added to each distance, so that none that may happen is left out. */
  private static final int AT_LEAST_IN_100 = 2;

  /** How much likelier a joker lies on a rack than another tile, as proposed. */
  private static final double JOKERS_KEPT = 2;

  /** The share of proposals that goes where racks weighed much. */
  private static final double AIMED = 0.75;

  private static final double MOST_TIMES = 30;

  private final LikelyHands hands = new LikelyHands();
  private final HandMeter meter = new HandMeter();
  private final Arrangements arrangements = new Arrangements();
  private final Lack lack = new Lack();
  private final Rack nothing = new Rack();
  private final Rack naturals = new Rack();
  private final int[] unseen = new int[Tile.KINDS];
  private final double[] jokerShare = new double[MOST_JOKERS + 1];
  private final double[] awayShare = new double[MOST_AWAY + 1];
  private final double[] jokersDrawn = new double[MOST_JOKERS + 1];
  private final double[] awayDrawn = new double[MOST_AWAY + 1];
  private double[] byHand = {};
  private double[][] counted = {};
  private Reach reach;
  private int unseenNaturals;
  private int size;
  private int drawnHand;
  private int drawnServing;
  private int drawnAway;
  private double[] timesByLine = {};
  private double[] upTo = {};

  /** A proposal for nobody yet. */
  public RackProposal() {}

  /**
   * Looks at what a seat knows of another.
   *
   * @param view what the seat knows
   * @param seat whose racks are proposed
   * @param concealed how many tiles she holds besides her exposures
   */
  public void look(SeatView view, int seat, int concealed) {
    hands.look(view, seat);
    reach = view.reach(seat);
    size = concealed;
    counted = new double[reach.size()][];
    unseenNaturals = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      unseen[kind] = view.unseen(kind);
      unseenNaturals += kind < Tile.NATURALS ? unseen[kind] : 0;
    }
    double sum = 0;
    double odds = 1;
    for (int jokers = 0; jokers <= MOST_JOKERS; jokers++) {
      jokerShare[jokers] =
          jokers > size
              ? 0
              : odds
                  * Arrangements.choose(unseen[Tile.JOKER], jokers)
                  * Arrangements.choose(unseenNaturals, size - jokers);
      sum += jokerShare[jokers];
      odds *= JOKERS_KEPT;
    }
    scale(jokerShare, sum);
    sum = 0;
    for (int away = 1; away <= MOST_AWAY; away++) {
      int counted = LikelyDistance.inHundred(view.exposures(seat).size(), view.wallLeft(), away);
      awayShare[away] = counted + AT_LEAST_IN_100;
      sum += awayShare[away];
    }
    scale(awayShare, sum);
    aim(jokerShare, awayShare, null);
  }

  /**
   * Proposes other jokers, distances and lines more often from now on; the weights take that off
   * again.
   *
   * @param jokers shares by jokers, above 0 wherever it was before
   * @param away shares by distance, the same
   * @param times by line, how many times as often as before; null for no change
   */
  private void aim(double[] jokers, double[] away, double[] times) {
    System.arraycopy(jokers, 0, jokersDrawn, 0, jokersDrawn.length);
    System.arraycopy(away, 0, awayDrawn, 0, awayDrawn.length);
    int lines = reach.hands().lines();
    timesByLine = times == null ? new double[lines] : times;
    if (times == null) {
      Arrays.fill(timesByLine, 1);
    }
    if (upTo.length < reach.size()) {
      upTo = new double[reach.size()];
    }
    double sum = 0;
    double before = 0;
    for (int hand = 0; hand < reach.size(); hand++) {
      before += hands.weight(hand);
      sum += hands.weight(hand) * timesByLine[reach.line(hand)];
      upTo[hand] = sum;
    }
    for (int line = 0; line < lines && sum > 0; line++) {
      timesByLine[line] *= before / sum;
    }
  }

  /**
   * Proposes as racks weigh: tries some out of all unseen tiles, and proposes the jokers, distances
   * and lines of those that weigh much more often (adaptive importance sampling: Oh and Berger, J.
   * Statist. Comput. Simul. 41, 1992, 143–168, from memory).
   *
   * @param racks how many are tried
   * @param random draws them
   * @param weigh how well a rack fits what was seen
   */
  void aim(int racks, RandomStream random, ToDoubleFunction<Rack> weigh) {
    double[] byJokers = new double[jokerShare.length];
    double[] byAway = new double[awayShare.length];
    double[] byLine = new double[reach.hands().lines()];
    double[] lineShare = new double[byLine.length];
    Rack rack = new Rack();
    double sum = 0;
    for (int tried = 0; tried < racks; tried++) {
      double weight = draw(unseen, random, rack);
      if (weight > 0) {
        weight *= weigh.applyAsDouble(rack);
        byJokers[rack.jokers()] += weight;
        byAway[drawnAway] += weight;
        byLine[reach.line(drawnHand)] += weight;
        sum += weight;
      }
    }
    if (sum == 0) {
      return;
    }
    for (int hand = 0; hand < reach.size(); hand++) {
      lineShare[reach.line(hand)] += share(hand);
    }
    for (int line = 0; line < byLine.length; line++) {
      double times = lineShare[line] > 0 ? byLine[line] / sum / lineShare[line] : 0;
      byLine[line] = Math.min(MOST_TIMES, AIMED * times) + 1 - AIMED;
    }
    mix(byJokers, sum, jokerShare);
    mix(byAway, sum, awayShare);
    aim(byJokers, byAway, byLine);
  }

  private static void mix(double[] weighed, double sum, double[] before) {
    for (int at = 0; at < weighed.length; at++) {
      weighed[at] = AIMED * weighed[at] / sum + (1 - AIMED) * before[at];
    }
  }

  private int drawHand(RandomStream random) {
    double place = (random.nextLong() >>> 11) * 0x1.0p-53 * upTo[reach.size() - 1];
    int at = Arrays.binarySearch(upTo, 0, reach.size(), place);
    int hand = at >= 0 ? at + 1 : -at - 1;
    while (hand < reach.size() - 1 && upTo[hand] <= place) {
      hand++;
    }
    return Math.min(hand, reach.size() - 1);
  }

  private static void scale(double[] values, double sum) {
    for (int at = 0; at < values.length; at++) {
      values[at] = sum > 0 ? values[at] / sum : 0;
    }
  }

  /**
   * Whether some hand can still be made.
   *
   * @return false where all are dead, and nothing is proposed
   */
  public boolean any() {
    return hands.any();
  }

  /**
   * The weight of a hand as proposed.
   *
   * @param hand its place in the seat's reach
   * @return its share of all, 0 to 1
   */
  double share(int hand) {
    return hands.weight(hand) / hands.all();
  }

  /**
   * Proposes a rack.
   *
   * @param left the tiles left, by kind; unchanged
   * @param random draws it
   * @param into takes the tiles
   * @return the weight that it has by the tiles left; 0 where there is none like that, and then the
   *     rack is not filled in
   */
  public double draw(int[] left, RandomStream random, Rack into) {
    into.clear();
    int jokers = drawFrom(jokersDrawn, random);
    int away = drawFrom(awayDrawn, random);
    drawnHand = drawHand(random);
    hand(drawnHand);
    drawnAway = away;
    drawnServing = serving(jokers, away);
    double ratio = ratio(drawnHand, left, jokers, drawnServing);
    if (ratio > 0) {
      into.add(Tile.JOKER, jokers);
      arrangements.draw(random, left.clone(), into);
    }
    return ratio;
  }

  /** The hand of the rack drawn last. */
  int drawnHand() {
    return drawnHand;
  }

  /** How many natural tiles of the rack drawn last serve that hand. */
  int drawnServing() {
    return drawnServing;
  }

  /**
   * The weight of a rack drawn before, by other tiles left.
   *
   * @param left the tiles left, by kind, those of the rack among them
   * @param hand the hand that it was drawn with
   * @param jokers jokers on the rack
   * @param serving natural tiles of it that serve the hand
   * @return the weight
   */
  double again(int[] left, int hand, int jokers, int serving) {
    hand(hand);
    return ratio(hand, left, jokers, serving);
  }

  /**
   * The weight of a given rack, with a hand that is drawn as likely as it would be the one proposed
   * with this rack.
   *
   * @param rack the rack
   * @param left the tiles left, by kind, those of the rack among them
   * @param random draws the hand
   * @return the weight; 0 where such a rack is never proposed
   */
  public double weight(Rack rack, int[] left, RandomStream random) {
    int jokers = rack.jokers();
    if (!hands.any() || jokers > MOST_JOKERS || jokerShare[jokers] == 0) {
      return 0;
    }
    naturals.set(rack);
    naturals.remove(Tile.JOKER, jokers);
    if (byHand.length < reach.size()) {
      byHand = new double[reach.size()];
    }
    int[] serve = new int[reach.size()];
    meter.hold(naturals);
    for (int hand = 0; hand < reach.size(); hand++) {
      serve[hand] = reach.wanted() - meter.away(reach, hand);
    }
    double sum = 0;
    for (int hand = 0; hand < reach.size(); hand++) {
      sum += density(hand, jokers, serve[hand]);
      byHand[hand] = sum;
    }
    if (sum == 0) {
      return 0;
    }
    double place = (random.nextLong() >>> 11) * 0x1.0p-53 * sum;
    int drawn = 0;
    while (byHand[drawn] <= place) {
      drawn++;
    }
    hand(drawn);
    return ratio(drawn, left, jokers, serve[drawn]);
  }

  /**
   * How likely a hand is proposed with one rack that has so many tiles of it, by the first
   * proposal.
   *
   * @param hand its place in the seat's reach
   * @param jokers jokers on the rack
   * @param serving natural tiles of it that serve the hand
   * @return a density; only ratios matter
   */
  private double density(int hand, int jokers, int serving) {
    hand(hand);
    int away = size + 1 - serving - Math.min(jokers, lack.opens());
    double weight = hands.weight(hand);
    if (weight <= 0 || jokers > MOST_JOKERS || away < 1 || away > MOST_AWAY) {
      return 0;
    }
    double count = ofAll(hand, jokers, serving) * Arrangements.choose(unseen[Tile.JOKER], jokers);
    return count > 0 ? weight * jokerShare[jokers] * awayShare[away] / count : 0;
  }

  private void hand(int hand) {
    meter.hold(nothing);
    meter.lack(reach, hand, lack);
  }

  private int serving(int jokers, int away) {
    return size + 1 - away - Math.min(jokers, lack.opens());
  }

  private double ratio(int hand, int[] left, int jokers, int serving) {
    int away = size + 1 - serving - Math.min(jokers, lack.opens());
    if (serving < 0 || serving > size - jokers || away < 1 || away > MOST_AWAY) {
      return 0;
    }
    double of = ofAll(hand, jokers, serving);
    if (of == 0) {
      return 0;
    }
    int naturalsLeft = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      naturalsLeft += left[kind];
    }
    double now = arrangements.count(lack, left, naturalsLeft, serving, size - jokers);
    double jokersOf = Arrangements.choose(unseen[Tile.JOKER], jokers);
    double aimed =
        jokerShare[jokers]
            / jokersDrawn[jokers]
            * awayShare[away]
            / awayDrawn[away]
            / timesByLine[reach.line(hand)];
    return aimed * now / of * Arrangements.choose(left[Tile.JOKER], jokers) / jokersOf;
  }

  /** How many such racks all unseen tiles would allow; counted once for each hand. */
  private double ofAll(int hand, int jokers, int serving) {
    if (counted[hand] == null) {
      counted[hand] = new double[(MOST_JOKERS + 1) * (MOST_SERVING + 1)];
      Arrays.fill(counted[hand], -1);
    }
    int place = jokers * (MOST_SERVING + 1) + serving;
    if (counted[hand][place] < 0) {
      counted[hand][place] =
          arrangements.count(lack, unseen, unseenNaturals, serving, size - jokers);
    }
    return counted[hand][place];
  }

  private static int drawFrom(double[] shares, RandomStream random) {
    double place = (random.nextLong() >>> 11) * 0x1.0p-53;
    int found = 0;
    for (int at = 0; at < shares.length && place >= 0; at++) {
      if (shares[at] > 0) {
        found = at;
        place -= shares[at];
      }
    }
    return found;
  }
}
