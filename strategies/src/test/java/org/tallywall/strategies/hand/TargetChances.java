package org.tallywall.strategies.hand;

import java.lang.reflect.Proxy;
import java.math.BigInteger;
import java.util.Arrays;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;

/**
 * One fixed hand and racks that hold parts of it: what the judge says of the draws to come, and the
 * exact chance. Whoever keeps what the hand can use and every joker is done when the tiles seen
 * hold it, so only which tiles are drawn counts, not their order.
 *
 * @param tiles the line as a card prints it; its kinds stand in {@code kinds}
 * @param kinds the kind of each group
 * @param sizes the tiles of each group
 * @param jokers whether its groups of three and more take jokers
 */
record TargetChances(String tiles, int[] kinds, int[] sizes, boolean jokers) {
  static final int TILES = 152;
  static final int JOKERS = 8;

  /** What is known of the target: how many tiles of each group are held, and how many jokers. */
  record Held(int[] naturals, int jokers) {}

  int groups() {
    return kinds.length;
  }

  int copies(int group) {
    return kinds[group] == Tile.FLOWER ? 8 : 4;
  }

  boolean takesJoker(int group) {
    return jokers && sizes[group] >= 3;
  }

  /** How many tiles lack, jokers held counted. */
  int away(Held held) {
    int lacking = 0;
    int open = 0;
    for (int group = 0; group < groups(); group++) {
      int lack = Math.max(0, sizes[group] - held.naturals()[group]);
      lacking += takesJoker(group) ? 0 : lack;
      open += takesJoker(group) ? lack : 0;
    }
    return lacking + Math.max(0, open - held.jokers());
  }

  /** A judge of this hand. */
  final class Judge {
    private final HandMeter meter = new HandMeter();
    private final HandChance chances = new HandChance();
    private final Lack lack = new Lack();
    private final ConcreteHands hands =
        TestTable.card("{\"tiles\": \"" + tiles + "\", \"value\": 25, \"jokers\": " + jokers + "}");
    private final int[] unseen = new int[Tile.KINDS];
    private final SeatView view =
        (SeatView)
            Proxy.newProxyInstance(
                SeatView.class.getClassLoader(),
                new Class<?>[] {SeatView.class},
                (self, method, asked) -> unseen[(int) asked[0]]);

    /** What it says with so many draws and claimable discards to come. */
    double says(Held held, double draws, double thrown, double all) {
      Rack rack = new Rack();
      Arrays.fill(unseen, 4);
      for (int group = 0; group < groups(); group++) {
        rack.add(kinds[group], held.naturals()[group]);
        unseen[kinds[group]] = copies(group) - held.naturals()[group];
      }
      rack.add(Tile.JOKER, held.jokers());
      unseen[Tile.JOKER] = JOKERS - held.jokers();
      meter.hold(rack);
      meter.lack(hands.closed(), 0, lack);
      chances.begin(view, new Outlook(draws, thrown, all));
      return chances.of(lack, jokers ? held.jokers() : 0, jokers, false, -1, 0, 0);
    }
  }

  Judge judge() {
    return new Judge();
  }

  /** The exact chance that so many draws of all that are unseen complete the hand. */
  double exact(Held held, int draws, int all) {
    BigInteger[][] ways = {{BigInteger.ONE}};
    int useful = 0;
    for (int group = 0; group < groups(); group++) {
      int left = copies(group) - held.naturals()[group];
      ways = with(ways, group, held.naturals()[group], left);
      useful += left;
    }
    int jokersLeft = JOKERS - held.jokers();
    BigInteger good = BigInteger.ZERO;
    for (int drawn = 0; drawn <= jokersLeft; drawn++) {
      for (int found = 0; found < ways.length; found++) {
        BigInteger enough = BigInteger.ZERO;
        for (int lacking = 0; lacking <= Math.min(JOKERS, held.jokers() + drawn); lacking++) {
          enough =
              enough.add(lacking < ways[found].length ? ways[found][lacking] : BigInteger.ZERO);
        }
        BigInteger rest = Ways.choose(all - useful - jokersLeft, draws - drawn - found);
        good = good.add(enough.multiply(Ways.choose(jokersLeft, drawn)).multiply(rest));
      }
    }
    return Ways.share(good, Ways.choose(all, draws));
  }

  /** Ways by tiles found and by tiles that jokers must stand for, with one group more. */
  private BigInteger[][] with(BigInteger[][] ways, int group, int held, int left) {
    BigInteger[][] more = new BigInteger[ways.length + left][JOKERS + 1];
    Arrays.stream(more).forEach(row -> Arrays.fill(row, BigInteger.ZERO));
    for (int before = 0; before < ways.length; before++) {
      for (int lacked = 0; lacked < ways[before].length; lacked++) {
        for (int drawn = 0; drawn <= left; drawn++) {
          int lack = Math.max(0, sizes[group] - held - drawn);
          if ((lack == 0 || takesJoker(group)) && lacked + lack <= JOKERS) {
            BigInteger one = ways[before][lacked].multiply(Ways.choose(left, drawn));
            more[before + drawn][lacked + lack] = more[before + drawn][lacked + lack].add(one);
          }
        }
      }
    }
    return more;
  }

  /** Hears of every different way to hold parts of the hand among 13 tiles dealt. */
  interface Deals {
    /** Such a way, and the chance of it. */
    void dealt(Held held, double chance);
  }

  /** Goes through all deals; groups of one size and as many copies are told apart only once. */
  void deals(Deals deals) {
    deal(deals, new int[groups()], 0, 0, BigInteger.ONE, 1);
  }

  private void deal(Deals deals, int[] held, int group, int sum, BigInteger ways, int alike) {
    if (group == groups()) {
      int rest = TILES - JOKERS;
      for (int at = 0; at < groups(); at++) {
        rest -= copies(at);
      }
      for (int own = 0; own <= JOKERS && sum + own <= 13; own++) {
        BigInteger all =
            ways.multiply(Ways.choose(JOKERS, own)).multiply(Ways.choose(rest, 13 - sum - own));
        deals.dealt(new Held(held.clone(), own), Ways.share(all, Ways.choose(TILES, 13)));
      }
      return;
    }
    boolean same =
        group > 0 && sizes[group] == sizes[group - 1] && copies(group) == copies(group - 1);
    int run = same ? runBefore(group) : 0;
    int most = same ? held[group - 1] : copies(group);
    for (int own = 0; own <= most && sum + own <= 13; own++) {
      held[group] = own;
      int equal = same && own == held[group - 1] ? alike + 1 : 1;
      BigInteger more =
          ways.multiply(Ways.choose(copies(group), own))
              .multiply(BigInteger.valueOf(run + 1))
              .divide(BigInteger.valueOf(equal));
      deal(deals, held, group + 1, sum + own, more, equal);
    }
  }

  private int runBefore(int group) {
    int run = 0;
    while (group - run > 0
        && sizes[group - run - 1] == sizes[group]
        && copies(group - run - 1) == copies(group)) {
      run++;
    }
    return run;
  }
}
