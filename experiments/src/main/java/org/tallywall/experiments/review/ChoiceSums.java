package org.tallywall.experiments.review;

/** What the games after one choice add up to. */
final class ChoiceSums {
  private final MeanRange points;
  private final long[] wonWith;
  private long wins;
  private long threw;
  private long walls;

  ChoiceSums(int apart, int lines) {
    points = new MeanRange(apart);
    wonWith = new long[lines];
  }

  void add(Round round, int choice) {
    long sum = 0;
    long squares = 0;
    for (int at = 0; at < round.worlds(); at++) {
      long gained = round.points(choice, at);
      sum += gained;
      squares += gained * gained;
      switch (round.end(choice, at)) {
        case Round.WON -> {
          wins++;
          wonWith[round.line(choice, at)]++;
        }
        case Round.THREW -> threw++;
        case Round.WALL -> walls++;
        default -> {}
      }
    }
    points.add(round.worlds(), sum, squares);
  }

  long games() {
    return points.n();
  }

  double mean() {
    return points.mean();
  }

  Ranged points(double alpha) {
    return points.range(alpha);
  }

  Ranged wins(double alpha) {
    return ShareRange.of(wins, games(), alpha);
  }

  Ranged threw(double alpha) {
    return ShareRange.of(threw, games(), alpha);
  }

  Ranged walls(double alpha) {
    return ShareRange.of(walls, games(), alpha);
  }

  /** The line won with most often, the first of several. */
  int line() {
    int best = ChoiceResult.NO_LINE;
    for (int line = 0; line < wonWith.length; line++) {
      if (wonWith[line] > (best < 0 ? 0 : wonWith[best])) {
        best = line;
      }
    }
    return best;
  }

  long wonWith(int line) {
    return line < 0 ? 0 : wonWith[line];
  }
}
