package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How the choices of a review stand. The differences of all pairs are watched from the first world
 * on and share one allowance, so whichever pair turns out to matter, its range was not chosen after
 * looking.
 */
final class Standings {
  /** The level of the ranges: those of a choice each by itself, those of the pairs together. */
  static final double CONFIDENCE = 0.95;

  /** What a choice costs is known well enough to within so many points a game. */
  static final double NEAR_ENOUGH = 2;

  /** Choices no further apart than this, for certain, are told apart well enough. */
  static final double AS_GOOD = 1;

  private static final double ALPHA = 1 - CONFIDENCE;

  private final int count;
  private final double pairAlpha;
  private final List<ChoiceSums> sums = new ArrayList<>();
  private final List<List<MeanRange>> pairs = new ArrayList<>();
  private final List<Integer> in = new ArrayList<>();

  /**
   * Standings before the first game.
   *
   * @param choices how many choices there are, 1 or more
   * @param apart the most points that two games can differ by
   * @param lines lines of the card
   */
  Standings(int choices, int apart, int lines) {
    count = choices;
    pairAlpha = ALPHA / Math.max(1, choices * (choices - 1) / 2);
    for (int choice = 0; choice < choices; choice++) {
      sums.add(new ChoiceSums(apart, lines));
      in.add(choice);
      List<MeanRange> earlier = new ArrayList<>();
      for (int other = 0; other < choice; other++) {
        earlier.add(new MeanRange(apart));
      }
      pairs.add(earlier);
    }
  }

  /** The choices that are still tried, in their order. */
  List<Integer> in() {
    return List.copyOf(in);
  }

  void add(Round round) {
    for (int at = 0; at < in.size(); at++) {
      int choice = in.get(at);
      sums.get(choice).add(round, choice);
      for (int earlier : in.subList(0, at)) {
        addPair(round, choice, earlier);
      }
    }
  }

  private void addPair(Round round, int choice, int earlier) {
    long sum = 0;
    long squares = 0;
    for (int at = 0; at < round.worlds(); at++) {
      long more = (long) round.points(choice, at) - round.points(earlier, at);
      sum += more;
      squares += more * more;
    }
    pairs.get(choice).get(earlier).add(round.worlds(), sum, squares);
  }

  /** How much more one choice brings than another, in the worlds in which both were tried. */
  private Ranged over(int choice, int other) {
    return choice > other
        ? pairs.get(choice).get(other).range(pairAlpha)
        : pairs.get(other).get(choice).range(pairAlpha).negated();
  }

  /** The choice that did best of those that are in; the first of several. */
  private int leader() {
    return in.stream()
        .max(
            Comparator.<Integer>comparingDouble(choice -> sums.get(choice).mean())
                .thenComparing(Comparator.reverseOrder()))
        .orElseThrow();
  }

  /** Lets go of the choices that are clearly behind and of which it is known by how much. */
  void dropOut() {
    int leader = leader();
    List<Integer> gone = new ArrayList<>();
    for (int choice : in) {
      Ranged behind = choice == leader ? Ranged.ZERO : over(leader, choice);
      boolean known = behind.half() <= NEAR_ENOUGH || behind.low() >= behind.half();
      if (behind.low() > 0 && known) {
        gone.add(choice);
      }
    }
    in.removeAll(gone);
  }

  /**
   * Whether the leader is told from all that are in, to within what matters. A choice that is alone
   * from the beginning is decided when its points are known well enough.
   */
  boolean decided() {
    if (count == 1) {
      return sums.get(0).points(ALPHA).half() <= NEAR_ENOUGH;
    }
    int leader = leader();
    return in.stream()
        .filter(choice -> choice != leader)
        .map(choice -> over(leader, choice))
        .allMatch(by -> by.low() > -AS_GOOD && by.high() < AS_GOOD);
  }

  /** What came of every choice, those in first, the best of them first. */
  List<ChoiceResult> results(List<Considered> choices) {
    int leader = leader();
    List<Integer> order = new ArrayList<>();
    for (int choice = 0; choice < count; choice++) {
      order.add(choice);
    }
    order.sort(
        Comparator.<Integer>comparingInt(choice -> choice == leader ? 0 : 1)
            .thenComparingDouble(choice -> choice == leader ? 0 : over(leader, choice).value()));
    Standing standing = new Standing(leader);
    return order.stream().map(choice -> standing.result(choice, choices.get(choice))).toList();
  }

  /** The verdicts of one look. */
  private final class Standing {
    private final int leader;
    private final List<Integer> mayBeBest = new ArrayList<>();

    Standing(int leader) {
      this.leader = leader;
      for (int choice = 0; choice < count; choice++) {
        if (surelyCosts(choice) <= 0) {
          mayBeBest.add(choice);
        }
      }
    }

    /** What a choice costs at least, against whichever other. */
    private double surelyCosts(int choice) {
      double least = 0;
      for (int other = 0; other < count; other++) {
        if (other != choice) {
          least = Math.max(least, over(other, choice).low());
        }
      }
      return least;
    }

    private double costsAtMost(int choice) {
      double most = 0;
      for (int other : mayBeBest) {
        if (other != choice) {
          most = Math.max(most, over(other, choice).high());
        }
      }
      return most;
    }

    ChoiceResult result(int choice, Considered what) {
      ChoiceSums own = sums.get(choice);
      Ranged toBest = choice == leader ? Ranged.ZERO : over(choice, leader);
      double least = surelyCosts(choice);
      double most = Math.max(least, costsAtMost(choice));
      double value = Math.max(least, Math.min(most, 0 - toBest.value()));
      int line = own.line();
      return new ChoiceResult(
          what,
          own.games(),
          own.points(ALPHA),
          own.wins(ALPHA),
          own.threw(ALPHA),
          own.walls(ALPHA),
          toBest,
          new Ranged(value, least, most),
          verdict(choice, least),
          line,
          own.wonWith(line),
          !in.contains(choice));
    }

    private Verdict verdict(int choice, double least) {
      if (least > 0) {
        return Verdict.BEHIND;
      } else if (choice != leader) {
        return Verdict.TIED;
      }
      return mayBeBest.size() == 1 ? Verdict.BEST : Verdict.AHEAD;
    }
  }
}
