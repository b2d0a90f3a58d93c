package org.tallywall.reports.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.Ranged;

/**
 * The sentences on published figures. Paired counts are those that Newcombe (Statistics in Medicine
 * 17, 1998, 2635–2650) and Fagerland and others (2014) give intervals for; sleep data are Student's
 * of 1908. Their intervals are tested with the statistics; here it is what is said about them.
 */
class WordingTest {
  @Test
  void sentence_whereTheRangeIsAboveZero_saysMoreWithItsRange() {
    // Newcombe's counts 20, 12, 2, 16: difference 0.20, his method 10 gives 0.0562 to 0.3292.
    assertThat(wins(0.20, 0.0561564248, 0.3292069954))
        .isEqualTo(
            "On the same deals, “A” won about 20 more games in 100 than “B” (5 to 33 more).");
  }

  @Test
  void sentence_whereTheRangeIsBelowZero_saysFewerAndTurnsTheRangeRound() {
    // Counts 59, 6, 16, 80: difference -0.0621, published -0.1186 to -0.0046.
    assertThat(wins(-0.0621, -0.1186211956, -0.0046251139))
        .isEqualTo(
            "On the same deals, “A” won about 6.2 fewer games in 100 than “B” (0.4 to 11.9 fewer).");
  }

  @Test
  void sentence_whereTheRangeHoldsZero_namesBothSidesAndNeverSaysNoDifference() {
    // Counts 4, 9, 3, 16: difference 0.1875, -0.0273 to 0.3807.
    assertThat(wins(0.1875, -0.0273480821, 0.3806715782))
        .isEqualTo(
            "“A” and “B” are too close to call: on the same deals, the difference could be anything"
                + " from “B” winning 3 more to “A” winning 39 more games in 100.");
  }

  @Test
  void sentence_ofPoints_isCountedInHundredGames() {
    // Student's sleep data as if they were points a game: 1.58, 0.7001142 to 2.4598858.
    Ranged hundred = new Ranged(1.58, 0.7001142367, 2.4598857633).inHundred();
    assertThat(Wording.sentence(MeasureWords.POINTS, "A", "B", hundred, 1))
        .isEqualTo(
            "On the same deals, “A” scored about 158 more points per 100 games than “B” (70 to"
                + " 246 more).");
  }

  @Test
  void sentence_clearAloneButNotAmongAll_saysSo() {
    Ranged hundred = new Ranged(0.01, 0.0005, 0.0195).inHundred();
    assertThat(Wording.sentence(MeasureWords.WIN_RATE, "A", "B", hundred, 0))
        .contains("+0.05 to +1.95", "among all the comparisons", "not enough to tell")
        .doesNotContain("won about");
  }

  /** None of 500: Clopper and Pearson's limit is 1 - 0.025^(1/500) = 0.00735. */
  @Test
  void same_inEveryDeal_saysHowRareADifferenceMayBe() {
    assertThat(Wording.same("A", "B", "points", 500))
        .isEqualTo("“A” and “B” came out exactly the same in all 500 deals (points).");
    assertThat(Wording.rarer(0.0073506, 0.95))
        .isEqualTo(
            "They may still differ in up to 0.74 of 100 deals, a limit that holds in at least 95 of"
                + " 100 such runs.");
  }

  /** GUM, JCGM 100:2008, 7.2.6: two significant digits of uncertainty, the value to that place. */
  @Test
  void range_ofTheGuidesExample_isRoundedToItsPlace() {
    Ranged guide = new Ranged(10.05762, 10.05762 - 0.027, 10.05762 + 0.027);
    assertThat(guide.estimate().text(Sign.MINUS_ONLY)).isEqualTo("10.058 (10.030 to 10.085)");
  }

  /** 2237 of 10,000 with Wilson's limits, rounded outward at the second digit of the half-width. */
  @Test
  void range_ofAShare_isRoundedOutward() {
    Ranged share = new Ranged(0.2237, 0.2156393512, 0.2319728463).inHundred();
    assertThat(share.estimate().text(Sign.MINUS_ONLY)).isEqualTo("22.37 (21.56 to 23.20)");
  }

  /** 302 against 227 of 7,453 deals, with Newcombe's range: from numbers to words. */
  @Test
  void sentence_fromNumbersOfARun_isTheOneToBeRead() {
    assertThat(wins(0.0100630619, 0.0040127832, 0.0161221682))
        .isEqualTo(
            "On the same deals, “A” won about 1.01 more games in 100 than “B” (0.40 to 1.62 more).");
  }

  /** 37,216 games each way for 22.5 against 23.5 in 100, at 100 games a month 31 years. */
  @Test
  void patience_forOneGameInHundred_isThirtyOneYears() {
    assertThat(Wording.patience(0.01, 37_216)).contains("37,200 games each way", "31 years");
  }

  @Test
  void patience_forMoreThanOneInHundred_isNotSpokenOf() {
    assertThat(Wording.patience(0.02, 9_400)).isEmpty();
    assertThat(Wording.patience(-0.02, 9_400)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "0.00001, < 0.0001",
    "0.0012, 0.0012",
    "0.00739, 0.0074",
    "0.05, 0.050",
    "0.61, 0.61",
    "1, 1",
    "0, < 0.0001"
  })
  void p_ofAnySize_isNeverZero(double p, String text) {
    assertThat(Wording.p(p)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0.3512, 0.36", "0.0204, 0.021", "205.72, 206", "12.01, 13", "0, 0"})
  void smallestDifference_isNeverRoundedDown(double size, String text) {
    assertThat(Wording.upTo(size)).isEqualTo(text);
  }

  @Test
  void tooSmall_namesDealsAndUnitAndLeavesSmallerOnesOpen() {
    assertThat(Wording.tooSmall(MeasureWords.POINTS, 20_000, 0.3512))
        .isEqualTo(
            "The smallest difference that a run of 20,000 deals would catch nine times out of ten is"
                + " 36 points per 100 games; there may be a smaller one.");
  }

  @ParameterizedTest
  @EnumSource(MeasureWords.class)
  void sentence_ofEveryMeasure_holdsNoneOfTheWordsThatPromiseTooMuch(MeasureWords measure) {
    for (int sign = -1; sign <= 1; sign++) {
      Ranged hundred = new Ranged(sign * 2, sign * 2 - 1, sign * 2 + 1);
      assertThat(Wording.sentence(measure, "A", "B", hundred, sign))
          .endsWith(".")
          .doesNotContain("prove", "optimal", "significant", "no difference", "percent", "-0")
          .contains(sign == 0 ? "too close to call" : "On the same deals");
    }
    assertThat(Wording.CAUTION).contains("programmed players", "points", "people or stakes");
  }

  @ParameterizedTest
  @CsvSource({
    "POINTS, points, points",
    "WIN_RATE, games, games won",
    "THREW_THE_WINNING_TILE, games, throwing the winning tile",
    "EXPOSURES, exposures, exposures",
    "EXCHANGES, jokers, jokers redeemed"
  })
  void measure_isSpokenOfByWhatIsCounted(MeasureWords measure, String noun, String matter) {
    assertThat(measure.noun()).isEqualTo(noun);
    assertThat(measure.matter()).isEqualTo(matter);
  }

  @Test
  void names_areListedAsPeopleSayThem() {
    assertThat(Listed.and(List.of("a"))).isEqualTo("a");
    assertThat(Listed.or(List.of("a", "b"))).isEqualTo("a or b");
    assertThat(Listed.and(List.of("a", "b", "c"))).isEqualTo("a, b, and c");
  }

  private static String wins(double value, double low, double high) {
    Ranged hundred = new Ranged(value, low, high).inHundred();
    return Wording.sentence(
        MeasureWords.WIN_RATE, "A", "B", hundred, hundred.estimate().clearSign());
  }
}
