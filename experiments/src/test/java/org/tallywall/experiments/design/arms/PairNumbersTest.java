package org.tallywall.experiments.design.arms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.PairTally;

/** Paired differences over deals against figures worked out outside the project. */
class PairNumbersTest {
  private static long[] games(String digits) {
    return digits.chars().mapToLong(digit -> digit - '0').toArray();
  }

  /** Six deals with a game in each of four seats. */
  private static PairTally sixDeals() {
    String[] first = {"1010", "0000", "1101", "0100", "0010", "1001"};
    String[] second = {"1000", "0010", "0100", "0100", "0000", "1000"};
    PairTally tally = new PairTally();
    for (int deal = 0; deal < first.length; deal++) {
      tally.addDeal(games(first[deal]), games(second[deal]));
    }
    return tally;
  }

  /** By hand: d = 0.25 -0.25 0.5 0 0.25 0.25; t with 5 degrees of freedom is 2.5705818366. */
  @Test
  void fourSeats_sixDeals_takeTheErrorOverDealsNotGames() {
    PairNumbers numbers = new PairNumbers(sixDeals(), Measure.WIN_RATE, 4, 0.95);
    Estimate difference = numbers.difference();

    assertThat(difference.value()).isCloseTo(1.0 / 6, within(1e-15));
    double half =
        (difference.interval().orElseThrow().high() - difference.interval().get().low()) / 2;
    assertThat(half).isCloseTo(0.2709631171, within(1e-9));
    assertThat(half / 2.5705818366).isCloseTo(0.1054092553, within(1e-9));
    assertThat(difference.method()).isEqualTo(Method.T_OVER_DEALS);
    assertThat(numbers.more()).isEqualTo(4);
    assertThat(numbers.fewer()).isEqualTo(1);
    assertThat(numbers.first()).isCloseTo(9.0 / 24, within(1e-15));
    assertThat(numbers.second()).isCloseTo(5.0 / 24, within(1e-15));
  }

  /**
   * 23.5 against 22.5 in 100: 37,216 games each way, by the formula of two proportions that is
   * found in every handbook (5 % two-sided, 9 in 10).
   */
  @Test
  void gamesToNotice_oneInHundred_areThoseOfTwoProportions() {
    PairTally tally = new PairTally();
    for (int deal = 0; deal < 1000; deal++) {
      tally.addDeal(new long[] {deal < 235 ? 1 : 0}, new long[] {deal < 225 ? 1 : 0});
    }
    PairNumbers numbers = new PairNumbers(tally, Measure.WIN_RATE, 1, 0.95);

    assertThat(numbers.gamesToNotice().orElseThrow()).isCloseTo(37_216, within(0.5));
    assertThat(numbers.mostDiffering()).isEmpty();
  }

  /** No deal of 100 differs: 1 - 0.025^(1/100), the exact limit. */
  @Test
  void mostDiffering_whereNoDealDid_isTheExactLimit() {
    PairTally tally = new PairTally();
    for (int deal = 0; deal < 100; deal++) {
      tally.addDeal(new long[] {deal % 2}, new long[] {deal % 2});
    }
    PairNumbers numbers = new PairNumbers(tally, Measure.WIN_RATE, 1, 0.95);

    assertThat(numbers.mostDiffering().orElseThrow())
        .isCloseTo(1 - Math.pow(0.025, 0.01), within(1e-9));
    assertThat(numbers.gamesToNotice()).isEmpty();
  }

  /** Correlation and gain by the plain sums of squares about the seats' means. */
  @Test
  void correlationAndGain_ofSixDeals_areThoseOfThePlainFormulas() {
    double[][] a = {{1, 0, 1, 0, 0, 1}, {0, 0, 1, 1, 0, 0}, {1, 0, 0, 0, 1, 0}, {0, 0, 1, 0, 0, 1}};
    double[][] b = {{1, 0, 0, 0, 0, 1}, {0, 0, 1, 1, 0, 0}, {0, 1, 0, 0, 0, 0}, {0, 0, 0, 0, 0, 0}};
    double aa = 0;
    double bb = 0;
    double ab = 0;
    for (int seat = 0; seat < 4; seat++) {
      double meanA = mean(a[seat]);
      double meanB = mean(b[seat]);
      for (int deal = 0; deal < 6; deal++) {
        aa += (a[seat][deal] - meanA) * (a[seat][deal] - meanA);
        bb += (b[seat][deal] - meanB) * (b[seat][deal] - meanB);
        ab += (a[seat][deal] - meanA) * (b[seat][deal] - meanB);
      }
    }
    PairNumbers numbers = new PairNumbers(sixDeals(), Measure.WIN_RATE, 4, 0.95);

    assertThat(numbers.correlation().orElseThrow())
        .isCloseTo(ab / Math.sqrt(aa * bb), within(1e-12));
    double deals = 0.1054092553 * 0.1054092553 * 6;
    assertThat(numbers.gain().orElseThrow())
        .isCloseTo((aa + bb) / (4 * 5) / (4 * deals), within(1e-6));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  /**
   * One seat: Newcombe's paired interval (Statistics in Medicine 17, 1998, 2635-2650, method 10)
   * and McNemar's mid-p (Fagerland, Lydersen and Laake, BMC Medical Research Methodology 13:91,
   * 2013).
   */
  @ParameterizedTest
  @CsvSource({
    "20, 12, 2, 16, 0.0561564248, 0.3292069954, 0.0073852539",
    "1, 1, 7, 12, -0.5069202267, -0.0255591242, 0.0390625",
    "59, 6, 16, 80, -0.1186211956, -0.0046251139, 0.0346896648"
  })
  void oneSeat_publishedTables_giveTheirIntervalsAndTests(
      int both, int first, int second, int neither, double low, double high, double p) {
    PairTally tally = new PairTally();
    add(tally, both, 1, 1);
    add(tally, first, 1, 0);
    add(tally, second, 0, 1);
    add(tally, neither, 0, 0);
    PairNumbers numbers = new PairNumbers(tally, Measure.WIN_RATE, 1, 0.95);

    assertThat(numbers.difference().interval().orElseThrow().low()).isCloseTo(low, within(1e-9));
    assertThat(numbers.difference().interval().orElseThrow().high()).isCloseTo(high, within(1e-9));
    assertThat(numbers.p().orElseThrow()).isCloseTo(p, within(1e-9));
  }

  private static void add(PairTally tally, int deals, long first, long second) {
    for (int deal = 0; deal < deals; deal++) {
      tally.addDeal(new long[] {first}, new long[] {second});
    }
  }

  /** Student, Biometrika 6 (1908): the sleep data, in tenths; t = 4.0621, p = 0.002833. */
  @Test
  void points_ofStudentsSleepData_giveHisTest() {
    long[] gaps = {12, 24, 13, 13, 0, 10, 18, 8, 46, 14};
    PairTally tally = new PairTally();
    for (long gap : gaps) {
      tally.addDeal(new long[] {gap}, new long[] {0});
    }
    PairNumbers numbers = new PairNumbers(tally, Measure.POINTS, 1, 0.95);

    assertThat(numbers.p().orElseThrow()).isCloseTo(0.0028328902, within(1e-9));
    assertThat(numbers.difference().interval().orElseThrow().low())
        .isCloseTo(7.001142367, within(1e-8));
  }

  /** What is alike in every deal has no spread, and so neither range nor smallest difference. */
  @Test
  void alike_inEveryDeal_hasNoRangeOfPointsAndTheExactOneOfShares() {
    PairTally tally = new PairTally();
    add(tally, 10, 1, 1);
    add(tally, 30, 0, 0);
    PairNumbers points = new PairNumbers(tally, Measure.POINTS, 1, 0.95);
    PairNumbers wins = new PairNumbers(tally, Measure.WIN_RATE, 1, 0.95);

    assertThat(points.difference().value()).isZero();
    assertThat(points.difference().interval()).isEmpty();
    assertThat(points.p().orElseThrow()).isEqualTo(1);
    assertThat(points.gain()).isEmpty();
    assertThat(points.correlation().orElseThrow()).isCloseTo(1, within(1e-12));
    assertThat(points.detectable(1)).isEmpty();
    assertThat(wins.detectable(1)).isEmpty();
    double limit = 1 - Math.pow(0.025, 1.0 / 40);
    assertThat(wins.difference().interval().orElseThrow().high()).isCloseTo(limit, within(1e-9));
    assertThat(wins.difference().interval().orElseThrow().low()).isCloseTo(-limit, within(1e-9));
    assertThat(wins.p().orElseThrow()).isEqualTo(1);
  }

  /** Nine differing deals are too few for Student's interval, ten are enough. */
  @Test
  void fewDifferingDeals_haveTheExactRange_orNoneOfPoints() {
    PairTally tally = new PairTally();
    for (int deal = 0; deal < 9; deal++) {
      tally.addDeal(new long[] {1, 0, 0, 0}, new long[4]);
    }
    for (int deal = 0; deal < 51; deal++) {
      tally.addDeal(new long[4], new long[4]);
    }
    PairNumbers nine = new PairNumbers(tally, Measure.WALL_GAMES, 4, 0.95);
    PairNumbers points = new PairNumbers(tally, Measure.POINTS, 4, 0.95);

    assertThat(nine.difference().method()).isEqualTo(Method.CLOPPER_PEARSON_BY_SIZE);
    assertThat(points.difference().interval()).isEmpty();
    assertThat(points.p()).isEmpty();
    assertThat(nine.detectable(1)).isEmpty();
    tally.addDeal(new long[] {1, 0, 0, 0}, new long[4]);
    PairNumbers ten = new PairNumbers(tally, Measure.WALL_GAMES, 4, 0.95);
    assertThat(ten.difference().method()).isEqualTo(Method.T_OVER_DEALS);
    assertThat(ten.detectable(1)).isPresent();
  }

  @Test
  void seatsThatCancel_areDealsThatDiffer() {
    PairTally tally = new PairTally();
    tally.addDeal(games("1000"), games("0010"));
    tally.addDeal(games("1000"), games("1000"));
    tally.addDeal(games("1100"), games("0100"));
    PairNumbers numbers = new PairNumbers(tally, Measure.WIN_RATE, 4, 0.95);

    assertThat(numbers.differing()).isEqualTo(2);
    assertThat(numbers.more()).isEqualTo(1);
    assertThat(numbers.fewer()).isZero();
    PairTally twice = new PairTally();
    twice.add(tally);
    twice.add(tally);
    assertThat(twice.differing()).isEqualTo(4);
    assertThat(twice.ofSize(0)).isEqualTo(4);
    assertThat(twice.ofSize(1)).isEqualTo(2);
  }

  /**
   * With 3 comparisons the smallest difference takes z at 1 - 0.05 / 6 (2.393980, from memory) in
   * place of 1.959964; a range that holds at every look takes its own half-width.
   */
  @Test
  void smallestDifference_allowsForAllComparisons_andForTheRangeShown() {
    PairTally tally = new PairTally();
    for (int deal = 0; deal < 400; deal++) {
      tally.addDeal(new long[] {deal % 4 == 0 ? 1 : 0}, new long[] {deal % 4 == 1 ? 1 : 0});
    }
    double error = Math.sqrt(200.0 / 399 / 400);
    PairNumbers numbers = new PairNumbers(tally, Measure.WIN_RATE, 1, 0.95);

    assertThat(numbers.detectable(1).orElseThrow())
        .isCloseTo((1.959963984540 + 1.281551565545) * error, within(1e-9));
    assertThat(numbers.detectable(3).orElseThrow())
        .isCloseTo((2.393980 + 1.281551565545) * error, within(1e-6));
    assertThat(numbers.shown(Optional.of(new Interval(-0.08, 0.1))).detectable(1).orElseThrow())
        .isCloseTo(0.09 + 1.281551565545 * error, within(1e-9));
  }
}
