package org.tallywall.strategies.guess;

import java.util.Arrays;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.OpponentReader;

/**
 * Guesses the tiles that a seat cannot see as players would hold them who have built for a while:
 * each opponent gets a hand it may head for ({@link LikelyHands}), as many tiles of it as its
 * distance allows ({@link LikelyDistance}), and strangers for the rest. The wall gets what is left.
 *
 * <p>Jokers are kept by whoever gets them, so more of the unseen ones lie on racks than chance
 * alone would put there. Nobody is guessed to wait for a tile that has just gone by unclaimed.
 */
public final class LikelyTiles implements Guess {
  private static final int RACK = 13;

  /** Of the jokers that opponents got and did not throw, the share still concealed. */
  private static final double STILL_CONCEALED = 0.65;

  private static final int TRIES = 4;

  private final LikelyHands[] hands = new LikelyHands[Seats.COUNT];
  private final int[] size = new int[Seats.COUNT];
  private final int[] jokers = new int[Seats.COUNT];
  private final int[] left = new int[Tile.KINDS];
  private final int[] wanted = new int[Tile.KINDS];
  private final boolean[][] wentBy = new boolean[Seats.COUNT][Tile.KINDS];
  private final HandMeter meter = new HandMeter();
  private final Lack lack = new Lack();
  private final Rack nothing = new Rack();
  private int[] tiles = {};
  private SeatView view;
  private double onRacks;

  /** A guess. */
  public LikelyTiles() {
    Arrays.setAll(hands, seat -> new LikelyHands());
  }

  @Override
  public void look(SeatView seen) {
    view = seen;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (seat != seen.seat()) {
        hands[seat].look(seen, seat);
        noteWhatWentBy(seat);
        size[seat] = OpponentReader.concealed(seen, seat);
      }
    }
    int drawn = seen.table().rules().tiles().size() - Deal.DEALT - seen.wallLeft();
    double got = (Seats.COUNT - 1) * (RACK + drawn / (double) Seats.COUNT);
    onRacks = STILL_CONCEALED * got / (seen.wallLeft() + STILL_CONCEALED * got);
    if (tiles.length < seen.table().rules().tiles().size()) {
      tiles = new int[seen.table().rules().tiles().size()];
    }
  }

  @Override
  public boolean guessesWall() {
    return true;
  }

  /** The tiles that others threw since a seat threw its last, the one on offer left out. */
  private void noteWhatWentBy(int seat) {
    Arrays.fill(wentBy[seat], false);
    int at = view.discards() - (view.offered() >= 0 ? 2 : 1);
    while (at >= 0 && view.discardSeat(at) != seat) {
      wentBy[seat][view.discardTile(at--)] = true;
    }
  }

  @Override
  public void deal(SeatView seen, RandomStream random, Position into) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left[kind] = view.unseen(kind);
    }
    dealJokers(random);
    for (int step = 1; step < Seats.COUNT; step++) {
      int seat = (view.seat() + step) % Seats.COUNT;
      Rack rack = into.rack(seat);
      rack.clear();
      rack.add(Tile.JOKER, jokers[seat]);
      if (hands[seat].any()) {
        build(seat, random, rack);
      }
    }
    dealRest(random, into);
  }

  private void dealJokers(RandomStream random) {
    Arrays.fill(jokers, 0);
    int roomInWall = view.wallLeft();
    for (int joker = view.unseen(Tile.JOKER); joker > 0; joker--) {
      if (random.happens(onRacks) || roomInWall == 0) {
        giveJoker(random.below(Seats.COUNT - 1));
      } else {
        roomInWall--;
      }
    }
  }

  /** Gives a joker to an opponent, or to the next with room for it. */
  private void giveJoker(int first) {
    for (int step = 0; step < Seats.COUNT - 1; step++) {
      int seat = (view.seat() + 1 + (first + step) % (Seats.COUNT - 1)) % Seats.COUNT;
      if (jokers[seat] < size[seat]) {
        jokers[seat]++;
        left[Tile.JOKER]--;
        return;
      }
    }
  }

  /** Gives a seat tiles of a hand that it may head for. */
  private void build(int seat, RandomStream random, Rack rack) {
    int away = LikelyDistance.draw(view.exposures(seat).size(), view.wallLeft(), random);
    boolean likely = false;
    for (int attempt = 0; attempt < TRIES && !likely; attempt++) {
      giveBack(rack);
      meter.hold(nothing);
      meter.lack(view.reach(seat), hands[seat].draw(random), lack);
      int useful = size[seat] - (away - 1) - Math.min(jokers[seat], lack.opens());
      int held = hold(Math.min(useful, size[seat] - jokers[seat]), random, rack);
      likely = held >= useful && !(away == 1 && waitsInVain(seat));
    }
  }

  private void giveBack(Rack rack) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int held = rack.held(kind);
      if (held > 0) {
        rack.remove(kind, held);
        left[kind] += held;
      }
    }
  }

  /** Moves tiles that the hand wants to a rack, the likelier the more of them are left. */
  private int hold(int most, RandomStream random, Rack rack) {
    int sum = 0;
    for (int at = 0; at < lack.kinds(); at++) {
      wanted[at] = lack.natural(at) + lack.open(at);
      sum += wanted[at] * left[lack.kind(at)];
    }
    int held = 0;
    while (held < most && sum > 0) {
      int place = random.below(sum);
      int at = 0;
      while (place >= wanted[at] * left[lack.kind(at)]) {
        place -= wanted[at] * left[lack.kind(at)];
        at++;
      }
      int kind = lack.kind(at);
      sum -= wanted[at] + left[kind] - 1;
      wanted[at]--;
      left[kind]--;
      rack.add(kind);
      held++;
    }
    return held;
  }

  /** Whether a tile that the hand still wants went by since the seat threw its last. */
  private boolean waitsInVain(int seat) {
    for (int at = 0; at < lack.kinds(); at++) {
      if (wanted[at] > 0 && wentBy[seat][lack.kind(at)]) {
        return true;
      }
    }
    return false;
  }

  /** Deals strangers to the racks, and the rest to the wall. */
  private void dealRest(RandomStream random, Position into) {
    int count = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      for (int copy = left[kind]; copy > 0; copy--) {
        tiles[count++] = kind;
      }
    }
    random.shuffle(tiles, count);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      while (seat != view.seat() && into.rack(seat).total() < size[seat]) {
        into.rack(seat).add(tiles[--count]);
      }
    }
    for (int joker = left[Tile.JOKER]; joker > 0; joker--) {
      int place = random.below(count + 1);
      tiles[count++] = tiles[place];
      tiles[place] = Tile.JOKER;
    }
    for (int at = 0; at < view.wallLeft(); at++) {
      into.wall(at, tiles[at]);
    }
  }
}
