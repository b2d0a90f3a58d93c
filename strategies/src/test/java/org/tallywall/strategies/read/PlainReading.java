package org.tallywall.strategies.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.rules.ScoreRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/**
 * Reads the others once more in plain code: every hand of the card is looked at tile by tile, the
 * chances are written out as sums, who passed what is found by walking round the table. Only the
 * fitted numbers are the same, typed a second time.
 */
final class PlainReading {
  private static final int[] WALLS = {10, 30, 50, 70, 90};

  private static final double[][] WIN = {
    {0.1002, 0.0480, 0.0150, 0.0028, 0.0002},
    {1.1634, 0.7750, 0.3981, 0.1461, 0.0397},
    {1.5043, 0.8688, 0.5620, 0.2916, 0.1946},
    {1.0232, 0.8034, 0.7815, 0.6161, 0.1613}
  };

  private static final double[][] CLAIM = {
    {0.1819, 0.1632, 0.1363, 0.0981, 0.0640},
    {2.7018, 2.3354, 2.1391, 1.8441, 1.5420},
    {0.7276, 0.8466, 0.7925, 0.7299, 0.6525},
    {0.1402, 0.1000, 0.1200, 0.1041, 0.1506}
  };

  /** Threw it herself, went round, passed it to the reader, one to three or more face up. */
  private static final double[][] WIN_EVIDENCE = {
    {0.10, 0.17, 0.12, 0.21, 0.145, 0.07}, {0.05, 0.125, 0.48, 0.46, 0.28, 0.25}
  };

  private static final double[][] CLAIM_EVIDENCE = {
    {0.07, 0.29, 0.11, 0.20, 0.08, 0.04}, {0.11, 0.32, 0.30, 0.30, 0.17, 0.12}
  };

  private static final double[] WALL_GAME = {0.70, 0.174, 0.067, 0.046, 0.043};

  private static final double HELD = 0.35;

  /** What is left to make of a hand that an opponent may hold. */
  private record Left(int line, int points, int[] natural, int[] open) {
    int total(int kind) {
      return natural[kind] + open[kind];
    }
  }

  private final SeatView view;
  private final ReadSettings settings;
  private final List<List<Left>> left = new ArrayList<>();
  private final double[] whole = new double[4];
  private final double[] points = new double[4];
  private final Map<Integer, PlainRisk> risks = new HashMap<>();
  private final double[][] waited = new double[4][Tile.NATURALS];
  private final double[][] wanted = new double[4][Tile.NATURALS];
  private final double[][] single = new double[4][Tile.NATURALS];

  PlainReading(SeatView view, ReadSettings settings) {
    this.view = view;
    this.settings = settings;
    for (int other = 0; other < 4; other++) {
      left.add(isRead(other) ? hands(view.exposures(other)) : List.of());
      for (Left hand : left.get(other)) {
        weigh(other, hand);
      }
    }
  }

  /** Whether the exposures of a seat are worked out. */
  boolean isRead(int other) {
    return isOpponent(other) && shown(other) > 0 && settings.exposures();
  }

  private boolean isOpponent(int other) {
    return other != view.seat() && !view.dead(other);
  }

  private int shown(int other) {
    return view.exposures(other).size();
  }

  private List<Left> hands(List<Exposure> exposures) {
    ConcreteHands all = view.table().hands();
    List<Left> found = new ArrayList<>();
    boolean joker = exposures.stream().anyMatch(laid -> laid.jokers() > 0);
    for (int at = 0; at < all.size(); at++) {
      Line line = all.line(all.lineOf(at));
      boolean jokers = line.terms().jokers();
      boolean possible = !line.concealed() && (jokers || !joker);
      if (possible && Reach.contains(all.hand(at), exposures)) {
        Left hand = rest(all.hand(at), all.lineOf(at), line, exposures);
        if (jokersNeeded(hand, jokers) <= jokersThereAre()) {
          found.add(known(hand));
        }
      }
    }
    return found;
  }

  private static Left rest(ConcreteHand hand, int at, Line line, List<Exposure> exposures) {
    int[] natural = new int[Tile.NATURALS];
    int[] open = new int[Tile.NATURALS];
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      natural[kind] = hand.loose(kind);
      open[kind] = hand.total(kind) - hand.loose(kind);
    }
    exposures.forEach(laid -> open[laid.kind()] -= laid.size());
    for (int kind = 0; kind < Tile.NATURALS && !line.terms().jokers(); kind++) {
      natural[kind] += open[kind];
      open[kind] = 0;
    }
    return new Left(at, line.value(), natural, open);
  }

  /** Jokers that the hand cannot do without; more than there are where it lacks naturals. */
  private int jokersNeeded(Left hand, boolean jokers) {
    int needed = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int there = view.unseen(kind) + (view.held(kind) > 0 ? 1 : 0);
      if (hand.natural()[kind] > there) {
        return Integer.MAX_VALUE;
      }
      needed += Math.max(0, hand.total(kind) - there);
    }
    return jokers || needed == 0 ? needed : Integer.MAX_VALUE;
  }

  private int jokersThereAre() {
    return view.table().rules().tiles().jokers() - view.discarded(Tile.JOKER);
  }

  /** The fifth and sixth of a kind can only be jokers and tell nothing of the kind. */
  private static Left known(Left hand) {
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (kind != Tile.FLOWER) {
        hand.open()[kind] = Math.min(hand.open()[kind], 4 - hand.natural()[kind]);
      }
    }
    return hand;
  }

  private void weigh(int other, Left hand) {
    double sum = 0;
    for (int last = 0; last < Tile.NATURALS; last++) {
      if (hand.total(last) > 0) {
        double weight = weight(hand, last);
        waited[other][last] += weight;
        sum += weight;
      }
    }
    whole[other] += sum;
    points[other] += sum * hand.points();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      wanted[other][kind] += hand.total(kind) > 0 ? sum : 0;
      single[other][kind] += hand.natural()[kind] > 0 ? sum : 0;
    }
  }

  /** How likely she holds all but one tile of a kind, one for which a joker would do if any. */
  private double weight(Left hand, int last) {
    double product = 1;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      if (hand.total(kind) > 0) {
        boolean lessOpen = kind == last && hand.open()[kind] > 0;
        boolean lessNatural = kind == last && !lessOpen;
        product *=
            ways(
                hand.natural()[kind] - (lessNatural ? 1 : 0),
                hand.open()[kind] - (lessOpen ? 1 : 0),
                view.unseen(kind));
      }
    }
    return product;
  }

  /** No joker, half as much for one, a quarter for two: the binomial formula for the rest. */
  static double ways(int natural, int open, int unseen) {
    double sum = 0;
    for (int jokers = 0; jokers <= Math.min(2, open); jokers++) {
      int copies = natural + open - jokers;
      if (copies <= unseen) {
        sum +=
            Math.pow(0.5, jokers)
                * choose(unseen, copies)
                * Math.pow(HELD, copies)
                * Math.pow(1 - HELD, unseen - copies);
      }
    }
    return sum;
  }

  private static long choose(int of, int some) {
    return some == 0 || some == of ? 1 : choose(of - 1, some - 1) + choose(of - 1, some);
  }

  int live(int other) {
    return left.get(other).size();
  }

  long lines(int other) {
    return left.get(other).stream().mapToInt(Left::line).distinct().count();
  }

  double win(int other, int kind) {
    if (settings.tells()) {
      return isOpponent(other) ? Math.min(0.95, risk(other).chance(kind)) : 0;
    }
    return chance(other, kind, WIN, WIN_EVIDENCE, 1 + settings.blind() * blind(other));
  }

  double claim(int other, int kind) {
    return chance(other, kind, CLAIM, CLAIM_EVIDENCE, 1);
  }

  private PlainRisk risk(int other) {
    return risks.computeIfAbsent(
        other,
        seat ->
            new PlainRisk(
                view,
                seat,
                told(seat),
                kind -> shown(seat) > 0 ? share(waited[seat][kind], seat) : 0));
  }

  /** What can be seen of an opponent. */
  PlainTells told(int other) {
    return new PlainTells(view, other, live(other), kind -> share(wanted[other][kind], other));
  }

  private int blind(int other) {
    return view.passes().stream().mapToInt(pass -> pass.blind().get(other)).sum();
  }

  private double chance(int other, int kind, double[][] usual, double[][] evidence, double nearer) {
    if (!isOpponent(other)) {
      return 0;
    }
    double share = 1;
    if (shown(other) > 0) {
      share = settings.exposures() ? share(waited[other][kind], other) : 0.03;
    }
    double factor = between(usual[Math.min(3, shown(other))]) * nearer;
    double told = told(other, kind, evidence[shown(other) > 0 ? 1 : 0]);
    return Math.min(0.95, factor * share * told);
  }

  private double share(double part, int other) {
    return whole[other] == 0 ? 0 : part / whole[other];
  }

  private double between(double[] row) {
    int wall = Math.max(10, Math.min(90, view.wallLeft()));
    int at = 0;
    while (at < 3 && wall > WALLS[at + 1]) {
      at++;
    }
    double part = (wall - WALLS[at]) / 20.0;
    return (1 - part) * row[at] + part * row[at + 1];
  }

  private double told(int other, int kind, double[] evidence) {
    double told = 1;
    if (settings.discards()) {
      int lying = view.faceUp(kind);
      told *= lying == 0 ? 1 : evidence[2 + Math.min(3, lying)];
      told *= threw(other, kind) ? evidence[0] : 1;
      told *= wentRound(kind) ? evidence[1] : 1;
    }
    return settings.passes() && passed(other, kind) ? told * evidence[2] : told;
  }

  private boolean threw(int other, int kind) {
    for (int at = 0; at < view.discards(); at++) {
      if (view.discardSeat(at) == other && view.discardTile(at) == kind) {
        return true;
      }
    }
    return false;
  }

  private boolean wentRound(int kind) {
    for (int back = 1; back <= 4 && back <= view.discards(); back++) {
      if (view.discardTile(view.discards() - back) == kind) {
        return true;
      }
    }
    return false;
  }

  /** What came from the left was passed to the right; a courtesy comes from across. */
  private boolean passed(int other, int kind) {
    for (SeatView.PassSeen pass : view.passes()) {
      int giver =
          pass.step() == null
              ? view.seat() + 2
              : switch (pass.step()) {
                case RIGHT_1, RIGHT_2 -> view.seat() + 3;
                case ACROSS_1, ACROSS_2 -> view.seat() + 2;
                case LEFT_1, LEFT_2 -> view.seat() + 1;
              };
      if (giver % 4 == other && pass.blind().get(other) == 0 && pass.received().contains(kind)) {
        return true;
      }
    }
    return false;
  }

  /**
   * By the usual payments who throws the winning tile pays double, and a hand without hope ends 40
   * points down anyway; by others, in proportion to what a win moves, 4.84 units usually.
   */
  double cost(int kind, double valueWeight, double lost, double exposed) {
    ScoreRules score = view.table().rules().score();
    int table = score.discarder() + score.others() + score.others();
    double drawn = 0.42 * (score.selfDrawn() + score.selfDrawn() + score.selfDrawn());
    double anyway = 40 * (drawn + 0.58 * table) / 4.84 - score.wallGame() * between(WALL_GAME);
    double cost = exposed * given(kind);
    for (int other = 0; other < 4; other++) {
      double value = whole[other] == 0 ? 28 : points[other] / whole[other];
      double feared = 28 + valueWeight * (value - 28);
      boolean all = score.oneHand() && shown(other) > 0 && lines(view.exposures(other)) == 1;
      double pays = all ? table : score.discarder();
      cost += win(other, kind) * (Math.max(0, pays * feared - anyway) + lost);
    }
    return cost;
  }

  /** How many lines of the card hold what is laid open, whatever else can be seen. */
  private int lines(List<Exposure> exposures) {
    ConcreteHands all = view.table().hands();
    boolean joker = exposures.stream().anyMatch(laid -> laid.jokers() > 0);
    return (int)
        IntStream.range(0, all.size())
            .filter(at -> !all.line(all.lineOf(at)).concealed())
            .filter(at -> !joker || all.line(all.lineOf(at)).terms().jokers())
            .filter(at -> Reach.contains(all.hand(at), exposures))
            .map(all::lineOf)
            .distinct()
            .count();
  }

  int mostExposures() {
    return IntStream.range(0, 4).filter(this::isOpponent).map(this::shown).max().orElse(0);
  }

  double given(int kind) {
    double given = 0;
    for (int other = 0; other < 4; other++) {
      given += claim(other, kind);
    }
    return given;
  }

  boolean hers(int kind, int exposures, double least) {
    for (int other = 0; other < 4; other++) {
      double part = share(wanted[other][kind], other);
      if (shown(other) >= exposures && part > 0 && part >= least) {
        return true;
      }
    }
    return false;
  }

  /** No feared player could win on it: none wants it for a single or pair, none shows three. */
  boolean exposureOnly(int kind, int exposures) {
    for (int other = 0; other < 4; other++) {
      boolean feared = shown(other) >= exposures && wanted[other][kind] > 0;
      if (feared && (single[other][kind] > 0 || shown(other) == 3 || shown(other) == 4)) {
        return false;
      }
    }
    return true;
  }

  /** Whether a hand that is left to a seat lacks one kind both in a pair and in a group. */
  boolean wantsInPairAndGroup(int other) {
    return left.get(other).stream()
        .anyMatch(
            hand ->
                IntStream.range(0, Tile.NATURALS)
                    .anyMatch(kind -> hand.natural()[kind] > 0 && hand.open()[kind] > 0));
  }

  boolean surelyWanted(int kind) {
    for (int other = 0; other < 4; other++) {
      int concealed = 13 - view.exposures(other).stream().mapToInt(Exposure::size).sum();
      boolean all = whole[other] > 0 && share(wanted[other][kind], other) > 0.999999999;
      if (shown(other) >= 3 && concealed <= 2 && all) {
        return true;
      }
    }
    return false;
  }
}
