package org.tallywall.strategies.hand;

import java.util.Arrays;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.NearHands;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * Judges what a rack is worth: for the concrete hands within reach the chance to complete them
 * before anybody else ({@link HandChance}, less a share for each tile that lacks) times what they
 * pay, several targets held at once.
 *
 * <p>The worth of a rack is that of its best target, plus a falling share of the next ones, since a
 * rack that can go several ways seldom needs all of them. Targets are ways of a few lines, those
 * that are worth most. The worth of a rack without a tile is judged the same way from the same
 * targets. Only targets within a few tiles of the nearest are looked at; hands that are dead are
 * left out.
 */
public final class RackJudge {
  private static final int KEPT = 14;
  private static final int WAYS = 8;
  private static final double SHARE_OF_NEXT = 0.5;

  /** Of the games in which a draw was known, those that lasted to the next one; set by judgment. */
  private static final double GOES_ON = 0.93;

  /** What a hand keeps of its worth without a joker that it needs; set by judgment. */
  private static final double WITHOUT_NEEDED_JOKER = 0.25;

  private final JudgeSettings settings;
  private final LineWeights weights;
  private final Foresight foresight;
  private final RackMeter imagining = new RackMeter();
  private final HandMeter lacks = new HandMeter();
  private final NearHands near = new NearHands();
  private final HandChance chances = new HandChance();
  private final Lack lack = new Lack();
  private final Lack[] lackOf = new Lack[KEPT];
  private final boolean[] lackKnown = new boolean[KEPT];
  private final Rack own = new Rack();
  private final Rack rack = new Rack();
  private final Rack coming = new Rack();
  private final Obtainable obtainable = new Obtainable();
  private final double[] value = new double[KEPT];
  private final int[] target = new int[KEPT];
  private final int[] lines;
  private final double[] best = new double[WAYS];
  private final int[] taken = new int[Tile.KINDS];
  private final int[] counted = new int[Tile.KINDS];
  private int[] draws = Foresight.NONE;
  private final double[] without = new double[Tile.KINDS];
  private long withoutKnown;
  private int targets;
  private Reach reach;
  private SeatView view;

  /**
   * A judge to whom all lines count for what they are.
   *
   * @param settings what it goes by
   */
  public RackJudge(JudgeSettings settings) {
    this(settings, LineWeights.EVEN);
  }

  /**
   * A judge.
   *
   * @param settings what it goes by
   * @param weights what lines count for besides, for this judge alone
   */
  public RackJudge(JudgeSettings settings, LineWeights weights) {
    this(settings, weights, Foresight.NOTHING);
  }

  /**
   * A judge that may know more than its seat. Draws that it knows count as held, but only what is
   * on the rack can be missed or taken.
   *
   * @param settings what it goes by
   * @param weights what lines count for besides, for this judge alone
   * @param foresight what it is told beside what its seat sees
   */
  public RackJudge(JudgeSettings settings, LineWeights weights, Foresight foresight) {
    this.settings = settings;
    this.weights = weights;
    this.foresight = foresight;
    this.lines = new int[settings.targets()];
    Arrays.setAll(lackOf, at -> new Lack());
  }

  /**
   * Judges the own rack as it is.
   *
   * @param seat what the seat knows
   * @param slack how many tiles further than the nearest a target may be
   * @param passesLeft passes still to come
   */
  public void look(SeatView seat, int slack, int passesLeft) {
    seat.copyRack(own);
    boolean offered = seat.offered() >= 0 && seat.offeredBy() != seat.seat();
    tell(seat, !offered);
    RackMeter meter = draws.length == 0 ? seat.meter() : imagine(seat.reach(seat.seat()));
    look(seat, seat.reach(seat.seat()), meter, slack, passesLeft);
  }

  /** Puts the draws that are known to those on the rack. */
  private void tell(SeatView seat, boolean throwsFirst) {
    draws = foresight.draws(seat, throwsFirst);
    coming.clear();
    rack.set(own);
    for (int tile : draws) {
      coming.add(tile);
      rack.add(tile);
    }
  }

  private RackMeter imagine(Reach possible) {
    imagining.hold(rack, possible);
    return imagining;
  }

  /**
   * Judges a rack that the seat might have.
   *
   * @param seat what the seat knows
   * @param tiles the concealed tiles
   * @param possible the hands that its exposures would leave
   * @param slack how many tiles further than the nearest a target may be
   * @param passesLeft passes still to come
   */
  public void look(SeatView seat, Rack tiles, Reach possible, int slack, int passesLeft) {
    own.set(tiles);
    tell(seat, true);
    look(seat, possible, imagine(possible), slack, passesLeft);
  }

  private void look(SeatView seat, Reach possible, RackMeter meter, int slack, int passesLeft) {
    view = seat;
    reach = possible;
    Arrays.fill(taken, 0);
    withoutKnown = 0;
    obtainable.count(view);
    meter.obtainable(obtainable.counts());
    meter.nearest(slack, near);
    lacks.hold(rack);
    Outlook hopes = Outlook.of(seat, settings.horizon(), settings.thrown(), passesLeft);
    chances.begin(seat, hopes, foresight, coming, draws.length);
    weights.begin(seat, rack, reach);
    keepTargets();
  }

  private void keepTargets() {
    targets = 0;
    for (int at = 0; at < near.count(); at++) {
      int hand = near.hand(at);
      lacks.lack(reach, hand, lack);
      keep(hand, worth(hand, lack, -1, 0, 0));
    }
    Arrays.fill(lackKnown, 0, targets, false);
    keepLines();
  }

  /** Leaves only targets of the best lines, as many as are kept. */
  private void keepLines() {
    int count = 0;
    int kept = 0;
    int most = weights.lines(lines.length, near.least());
    for (int at = 0; at < targets; at++) {
      int line = reach.line(target[at]);
      boolean known = false;
      for (int other = 0; other < count; other++) {
        known |= lines[other] == line;
      }
      if (!known && count < most) {
        lines[count++] = line;
        known = true;
      }
      if (known) {
        target[kept] = target[at];
        value[kept++] = value[at];
      }
    }
    targets = kept;
  }

  private void keep(int hand, double worth) {
    if (targets == KEPT && worth <= value[KEPT - 1]) {
      return;
    }
    int at = targets < KEPT ? targets++ : KEPT - 1;
    while (at > 0 && value[at - 1] < worth) {
      value[at] = value[at - 1];
      target[at] = target[at - 1];
      at--;
    }
    value[at] = worth;
    target[at] = hand;
  }

  /** Worth of one target, some tiles of one kind taken away. */
  private double worth(int hand, Lack lack, int kind, int natural, int open) {
    Line line = reach.hands().line(reach.line(hand));
    int held = line.terms().jokers() ? rack.jokers() : 0;
    double worth = worth(line, lack, held, kind, natural, open);
    double counted = weights.jokers();
    if (held > 0 && counted < 1) {
      worth = counted * worth + (1 - counted) * worth(line, lack, 0, kind, natural, open);
    }
    worth *= weights.of(hand, lack, lack.naturals() + natural);
    return draws.length == 0 ? worth : worth * stillOn(hand, kind);
  }

  /** The share of games that are still on when the last of the known draws comes that it needs. */
  private double stillOn(int hand, int lost) {
    Arrays.fill(counted, 0);
    double share = 1;
    double now = 1;
    for (int tile : draws) {
      now *= GOES_ON;
      int copy = own.held(tile) - taken[tile] - (tile == lost ? 1 : 0) + ++counted[tile];
      if (tile == Tile.JOKER || reach.wants(hand, tile, copy)) {
        share = now;
      }
    }
    return share;
  }

  private double worth(Line line, Lack lack, int held, int kind, int natural, int open) {
    double chance =
        chances.of(lack, held, line.terms().jokers(), line.concealed(), kind, natural, open);
    int naturals = lack.naturals() + natural;
    int away = Math.max(naturals, naturals + lack.opens() + open - held);
    for (int step = 0; step < away; step++) {
      chance *= settings.haste();
    }
    return chance * settings.weigh(line.value());
  }

  /**
   * The least distance of a living hand.
   *
   * @return 0 to 14, or {@link HandMeter#NONE}
   */
  public int least() {
    return near.least();
  }

  /**
   * The line of the best target.
   *
   * @return its place on the card, or {@link Player#NO_AIM}
   */
  public int aim() {
    return targets == 0 ? Player.NO_AIM : reach.line(target[0]);
  }

  /**
   * The best target.
   *
   * @return the hand's place among all of the card, or -1 where there is none
   */
  public int bestHand() {
    return targets == 0 ? -1 : reach.index(target[0]);
  }

  /**
   * The chance to complete the best target before the wall runs out, if nobody else wins: what
   * {@link HandChance} says, nothing weighed in.
   *
   * @return 0 to 1; 0 where there is no target
   */
  public double bestChance() {
    if (targets == 0) {
      return 0;
    }
    Line line = reach.hands().line(aim());
    boolean jokers = line.terms().jokers();
    int held = jokers ? rack.jokers() : 0;
    return chances.of(lackOf(0), held, jokers, line.concealed(), -1, 0, 0);
  }

  /**
   * What the rack is worth.
   *
   * @return 0 or more, in weighed points
   */
  public double worth() {
    Arrays.fill(best, 0);
    for (int at = 0; at < targets; at++) {
      rank(value[at]);
    }
    return together();
  }

  /**
   * What the rack is worth without one tile more of a kind than were taken.
   *
   * @param kind a kind that is held
   * @return 0 or more, in weighed points
   */
  public double worthWithout(int kind) {
    if ((withoutKnown >>> kind & 1) == 0) {
      without[kind] = together(kind);
      withoutKnown |= 1L << kind;
    }
    return without[kind];
  }

  private double together(int kind) {
    Arrays.fill(best, 0);
    for (int at = 0; at < targets; at++) {
      rank(valueWithout(at, kind));
    }
    return together();
  }

  private double valueWithout(int at, int kind) {
    int hand = target[at];
    if (kind == Tile.JOKER) {
      boolean toSpare = lackOf(at).opens() < rack.jokers() - taken[kind];
      return toSpare ? value[at] : value[at] * WITHOUT_NEEDED_JOKER;
    }
    int natural = 0;
    int open = 0;
    for (int gone = 0; gone <= taken[kind]; gone++) {
      int held = rack.held(kind) - gone;
      if (held > 0 && reach.wants(hand, kind, held)) {
        if (reach.wantsNatural(hand, kind, held)) {
          natural++;
        } else {
          open++;
        }
      }
    }
    if (natural + open == 0) {
      return value[at];
    }
    return worth(hand, lackOf(at), kind, natural, open);
  }

  private Lack lackOf(int at) {
    if (!lackKnown[at]) {
      lacks.lack(reach, target[at], lackOf[at]);
      lackKnown[at] = true;
    }
    return lackOf[at];
  }

  private void rank(double worth) {
    if (worth <= best[WAYS - 1]) {
      return;
    }
    for (int at = 0; at < best.length; at++) {
      if (worth > best[at]) {
        double kept = best[at];
        best[at] = worth;
        worth = kept;
      }
    }
  }

  private double together() {
    double sum = 0;
    double share = 1;
    for (double one : best) {
      sum += share * one;
      share *= SHARE_OF_NEXT;
    }
    return sum;
  }

  /** Which kinds may be taken. */
  @FunctionalInterface
  public interface KindTest {
    /**
     * Whether a kind may be taken.
     *
     * @param kind a natural kind
     * @return true if it may
     */
    boolean test(int kind);
  }

  /**
   * The tile whose loss costs least; of equals the one of which most lie face up.
   *
   * @return its kind; a joker only where nothing else is held, -1 on an empty rack
   */
  public int leastMissed() {
    return leastMissed(kind -> true);
  }

  /**
   * The tile whose loss costs least among those that may be taken.
   *
   * @param allowed which natural kinds may be taken
   * @return its kind; a joker where no natural may be taken, -1 where there is none either
   */
  public int leastMissed(KindTest allowed) {
    int found = -1;
    double most = -1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (own.held(kind) > taken[kind] && allowed.test(kind)) {
        double left = worthWithout(kind);
        boolean tied = left == most && view.faceUp(kind) > view.faceUp(found);
        if (left > most || tied) {
          most = left;
          found = kind;
        }
      }
    }
    return found < 0 && own.jokers() > taken[Tile.JOKER] ? Tile.JOKER : found;
  }

  /**
   * The best target's line that loses something with one tile more of a kind.
   *
   * @param kind a kind that is held
   * @return its place on the card, or {@link Player#NO_AIM} where no target needs the tile
   */
  public int lineThatNeeds(int kind) {
    for (int at = 0; at < targets; at++) {
      if (valueWithout(at, kind) < value[at]) {
        return reach.line(target[at]);
      }
    }
    return Player.NO_AIM;
  }

  /**
   * Counts one tile of a kind as gone in what follows.
   *
   * @param kind its kind
   */
  public void take(int kind) {
    taken[kind]++;
    withoutKnown &= ~(1L << kind);
  }

  /**
   * Whether one of the targets wants a further tile of a kind.
   *
   * @param kind a natural kind
   * @return true if one does
   */
  public boolean wantsNow(int kind) {
    int further = rack.held(kind) + 1;
    for (int at = 0; at < targets; at++) {
      if (reach.wants(target[at], kind, further)) {
        return true;
      }
    }
    return false;
  }
}
