package org.tallywall.strategies.guess;

import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Draws the rack of one opponent: several are proposed, each is weighed by how well it fits what
 * was seen, and one is taken by weight (sampling importance resampling: Rubin, Bayesian Statistics
 * 3, 1988, 395–402). Where she holds a rack already, it stands among those proposed, so that
 * drawing again leaves the joint chances of all racks as they are (conditional resampling: Andrieu,
 * Doucet and Holenstein, J. R. Statist. Soc. B 72, 2010, 269–342). Papers from memory.
 */
final class OpponentDraw {
  private static final int MOST = 64;

  /** For each rack that is to be weighed, so many may be proposed that cannot be. */
  private static final int TRIES = 6;

  private final RackProposal proposal = new RackProposal();
  private final RackTraits traits = new RackTraits();
  private final TraitWeights weights;
  private final Rack[] racks = new Rack[MOST];
  private final double[] weight = new double[MOST];
  private final double[] fits = new double[MOST];
  private final int[] hand = new int[MOST];
  private final int[] serving = new int[MOST];
  private int size;
  private boolean held;
  private boolean weighed;
  private int taken;
  private long draws;
  private double effective;

  /**
   * Draws for an opponent.
   *
   * @param weights what her traits count for
   */
  OpponentDraw(TraitWeights weights) {
    this.weights = weights;
    for (int at = 0; at < MOST; at++) {
      racks[at] = new Rack();
    }
  }

  /**
   * Looks at her.
   *
   * @param view what the seat that guesses knows
   * @param seat her seat
   * @param concealed how many tiles she holds besides her exposures
   */
  void look(SeatView view, int seat, int concealed) {
    size = concealed;
    proposal.look(view, seat, concealed);
    traits.look(view, seat, proposal);
    draws = 0;
    effective = 0;
  }

  /**
   * Tries some racks first, so that those proposed later fit better.
   *
   * @param racks how many
   * @param random draws them
   */
  void aim(int racks, RandomStream random) {
    if (proposal.any()) {
      proposal.aim(racks, random, this::fit);
    }
  }

  private double fit(Rack rack) {
    traits.of(rack);
    return weights.weigh(traits);
  }

  /** Forgets the rack that she holds. */
  void clear() {
    held = false;
  }

  /**
   * Draws a rack out of the tiles left, and takes its tiles out of them.
   *
   * @param left tiles left, by kind; if she holds a rack, its tiles are put back first
   * @param candidates how many racks are proposed, 1 to 63
   * @param random draws
   */
  void draw(int[] left, int candidates, RandomStream random) {
    int count = 0;
    if (held) {
      move(racks[taken], left, 1);
    }
    if (held && weighed) {
      swap(0, taken);
      weight[0] = fits[0] * proposal.again(left, hand[0], racks[0].jokers(), serving[0]);
      count = 1;
    }
    int most = count + candidates;
    int tries = proposal.any() ? TRIES * candidates : 0;
    for (int tried = 0; tried < tries && count < most; tried++) {
      double ratio = proposal.draw(left, random, racks[count]);
      if (ratio > 0) {
        fits[count] = fit(racks[count]);
        weight[count] = fits[count] * ratio;
        hand[count] = proposal.drawnHand();
        serving[count] = proposal.drawnServing();
        count++;
      }
    }
    if (count == 0) {
      anyTiles(left, random);
    } else {
      taken = take(count, random);
      weighed = true;
    }
    held = true;
    move(racks[taken], left, -1);
  }

  private static double unit(RandomStream random) {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }

  private void swap(int one, int other) {
    Rack rack = racks[one];
    racks[one] = racks[other];
    racks[other] = rack;
    fits[one] = fits[other];
    hand[one] = hand[other];
    serving[one] = serving[other];
  }

  private static void move(Rack rack, int[] left, int times) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left[kind] += times * rack.held(kind);
    }
  }

  private int take(int count, RandomStream random) {
    double sum = 0;
    double squares = 0;
    for (int at = 0; at < count; at++) {
      sum += weight[at];
      squares += weight[at] * weight[at];
    }
    draws++;
    effective += sum * sum / squares;
    double place = unit(random) * sum;
    int at = 0;
    while (at < count - 1 && place >= weight[at]) {
      place -= weight[at++];
    }
    return at;
  }

  /** No hand can be made of what is left: any tiles, all equally likely. */
  private void anyTiles(int[] left, RandomStream random) {
    Rack rack = racks[0];
    rack.clear();
    int[] rest = left.clone();
    int sum = 0;
    for (int tiles : rest) {
      sum += tiles;
    }
    for (int tile = 0; tile < size; tile++) {
      int place = random.below(sum--);
      int kind = 0;
      while (place >= rest[kind]) {
        place -= rest[kind++];
      }
      rest[kind]--;
      rack.add(kind);
    }
    taken = 0;
    weighed = false;
  }

  /** The rack drawn last. */
  Rack rack() {
    return racks[taken];
  }

  /** The mean effective number of racks among those proposed; 0 where nothing was weighed. */
  double effective() {
    return draws == 0 ? 0 : effective / draws;
  }
}
