package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.tile.Tile;

/**
 * What the judge says of one fixed hand that is drawn for by one player alone, without claims,
 * against the exact chance, worked out here from whole numbers ({@link TargetChances}); the figures
 * were found before by a separate program.
 *
 * <p>The judge is not exact there: it takes kinds to be independent though they share the draws,
 * which says too much (T4n and P7, without jokers), and counts on two jokers more than it holds at
 * most, which says too little (T4 and K3). How far it strays is measured here; the bounds are what
 * was measured and about a hundredth more, so a judge that strays further fails.
 */
class HandChanceSolitaireTest {
  static final TargetChances T4 = groupsOfThree(true);
  static final TargetChances T4N = groupsOfThree(false);

  private static final TargetChances K3 =
      new TargetChances(
          "FF 2222b 4444c 6666d", new int[] {Tile.FLOWER, 1, 12, 23}, new int[] {2, 4, 4, 4}, true);

  private static final TargetChances P7 =
      new TargetChances(
          "33b 44b 77b 22c 88c 11d 77d",
          new int[] {2, 3, 6, 10, 16, 18, 24},
          new int[] {2, 2, 2, 2, 2, 2, 2},
          false);

  private static final int DEALT = 13;
  private static final int UNSEEN = TargetChances.TILES - DEALT;

  private static TargetChances groupsOfThree(boolean jokers) {
    return new TargetChances(
        "111b 555c 999d NNN RR",
        new int[] {0, 13, 26, Tile.NORTH, Tile.RED},
        new int[] {3, 3, 3, 3, 2},
        jokers);
  }

  private static TargetChances target(String name) {
    return switch (name) {
      case "T4" -> T4;
      case "T4n" -> T4N;
      case "K3" -> K3;
      default -> P7;
    };
  }

  /** The mean over all deals of 13 tiles of what is said at once, with so many draws to come. */
  private static double said(TargetChances target, int draws) {
    TargetChances.Judge judge = target.judge();
    double[] sums = new double[2];
    target.deals(
        (held, chance) -> {
          sums[0] += chance * judge.says(held, draws, 0, UNSEEN);
          sums[1] += chance;
        });
    assertThat(sums[1]).as("all deals").isCloseTo(1, within(1e-12));
    return sums[0];
  }

  @ParameterizedTest
  @CsvSource({
    "T4, 25, 0.000538484775, -4.23e-4, 0",
    "T4, 40, 0.024502696954, -0.0212, 0",
    "T4, 60, 0.299758374021, -0.2512, 0",
    "T4, 80, 0.757950239650, -0.5235, 0",
    "T4, 100, 0.946052531714, -0.3684, 0",
    "T4n, 25, 0.000000302585, 0, 7.1e-7",
    "T4n, 40, 0.000042640251, 0, 4.36e-5",
    "T4n, 60, 0.002817884197, 0, 0.00116",
    "T4n, 80, 0.042809290565, 0, 0.00702",
    "T4n, 100, 0.253560815348, 0, 0.01305",
    "K3, 25, 0.000176405657, -1.41e-4, 0",
    "K3, 40, 0.009795930134, -0.00879, 0",
    "K3, 60, 0.171850842243, -0.1566, 0",
    "K3, 80, 0.641386447240, -0.552, 0",
    "K3, 100, 0.963382230245, -0.6636, 0",
    "P7, 25, 0.000021308415, 0, 3.91e-5",
    "P7, 40, 0.001597179594, 0, 0.00111",
    "P7, 60, 0.043847628166, 0, 0.00953",
    "P7, 80, 0.271518247501, 0, 0.0161",
    "P7, 100, 0.680650210485, 0, 0.00648"
  })
  void overAllDeals_whatIsSaid_straysNoFurtherThanMeasured(
      String name, int draws, double figure, double least, double most) {
    TargetChances target = target(name);
    TargetChances.Held nothing = new TargetChances.Held(new int[target.groups()], 0);
    double exact = target.exact(nothing, DEALT + draws, TargetChances.TILES);
    assertThat(exact).isCloseTo(figure, within(6e-13));
    assertThat(said(target, draws) - exact).isBetween(least, most);
  }

  /**
   * T4 near its end, 24 draws to come: tiles of each group held, jokers held, how far it strays.
   */
  @ParameterizedTest
  @CsvSource({
    "3 3 3 3 1 0, 1, 0, 0",
    "3 3 3 2 2 0, 1, -0.0038, 0",
    "3 3 2 2 2 0, 2, -0.0871, 0",
    "3 3 3 2 1 0, 2, 0, 0.0023",
    "3 3 1 1 1 2, 3, -0.0524, 0",
    "3 2 2 2 2 0, 3, -0.2505, 0",
    "2 2 2 2 1 2, 3, -0.1200, 0",
    "3 2 2 2 1 0, 4, -0.1003, 0",
    "2 2 2 2 1 0, 5, -0.0785, 0"
  })
  void nearAHand_whatIsSaid_straysNoFurtherThanMeasured(
      String held, int away, double least, double most) {
    int[] counts = Arrays.stream(held.split(" ")).mapToInt(Integer::parseInt).toArray();
    TargetChances.Held part = new TargetChances.Held(Arrays.copyOf(counts, 5), counts[5]);
    assertThat(T4.away(part)).isEqualTo(away);
    double strays = T4.judge().says(part, 24, 0, UNSEEN) - T4.exact(part, 24, UNSEEN);
    assertThat(strays).isBetween(least - 1e-12, most + 1e-12);
  }

  @Test
  void jokersEnough_whatIsSaid_isCertain() {
    TargetChances.Held all = new TargetChances.Held(new int[] {3, 3, 1, 2, 2}, 3);
    assertThat(T4.judge().says(all, 0, 0, UNSEEN)).isEqualTo(1);
    assertThat(T4.exact(all, 0, UNSEEN)).isEqualTo(1);
  }
}
