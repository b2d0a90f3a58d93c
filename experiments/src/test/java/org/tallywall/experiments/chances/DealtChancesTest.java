package org.tallywall.experiments.chances;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * The sums against tiles that were dealt.
 *
 * <p>Hypothesis of every test: the exact sums are the chances of the project's own deals. n =
 * 200,000 deals, seed {@value #SEED}, fixed. Counts: Pearson's chi-square with its upper 1e-6 point
 * ({@code new ChiSquaredDistribution(df).inverseCumulativeProbability(1 - 1e-6)} of Commons Math
 * 3.6.1: 33.376842 for 4 degrees of freedom, 30.664850 for 3, 35.888187 for 5). Chances that differ
 * from deal to deal: the sum of (came − chance) over its standard error, within 4.891638, the
 * normal distribution's two-sided 1e-6. A fresh seed would fail one line in a million; a failure
 * means that sums and deals disagree, not that another seed is wanted.
 */
@Tag("one-jdk")
class DealtChancesTest {
  private static final long SEED = 20_261_130L;
  private static final int N = 200_000;
  private static final double Z = 4.891638476;
  private static final int SOUTH = 1;
  private static final int FIVE_BAM = Tile.suited(0, 5);
  private static final int EIGHT_BAM = Tile.suited(0, 8);
  private static final List<Integer> WAITED = List.of(FIVE_BAM, EIGHT_BAM, Tile.NORTH);
  private static final int DRAWS = 10;

  private static final long[] JOKERS = new long[5];
  private static final long[] FLOWERS_OF_EAST = new long[5];
  private static final long[] COPIES = new long[4];
  private static final long[] PAIRS = new long[6];
  private static final long[] PAIRS_OF_EAST = new long[6];
  private static final Score YOU_DRAW = new Score();
  private static final Score ANYBODY_DRAWS = new Score();
  private static final Score PASSED = new Score();

  /** How often something came whose chance differs from case to case. */
  private static final class Score {
    private double off;
    private double variance;

    void add(boolean came, double chance) {
      off += (came ? 1 : 0) - chance;
      variance += chance * (1 - chance);
    }

    double z() {
      return off / Math.sqrt(variance);
    }
  }

  @BeforeAll
  static void deal() {
    int[][] held = new int[4][Tile.KINDS];
    for (int number = 0; number < N; number++) {
      Deal deal = Deal.of(SEED, number, TileSet.USUAL);
      for (int[] rack : held) {
        Arrays.fill(rack, 0);
      }
      for (int place = 0; place < Deal.DEALT; place++) {
        held[Deal.dealtTo(place)][deal.tile(place)]++;
      }
      count(JOKERS, held[SOUTH][Tile.JOKER]);
      count(FLOWERS_OF_EAST, held[0][Tile.FLOWER]);
      count(COPIES, held[SOUTH][FIVE_BAM]);
      count(PAIRS, pairs(held[SOUTH]));
      count(PAIRS_OF_EAST, pairs(held[0]));
      wait(deal, held[SOUTH]);
      pass(deal, held[SOUTH]);
    }
  }

  /** The last cell takes what is more. */
  private static void count(long[] cells, int value) {
    cells[Math.min(value, cells.length - 1)]++;
  }

  private static int pairs(int[] rack) {
    return (int) Arrays.stream(rack, 0, Tile.FLOWER).filter(copies -> copies >= 2).count();
  }

  private static int outs(int[] rack) {
    return WAITED.stream().mapToInt(kind -> 4 - rack[kind]).sum();
  }

  /** South has seen her own 13 tiles and draws the first of 99, the fifth, the ninth … */
  private static void wait(Deal deal, int[] rack) {
    Waiting wait = new Waiting(outs(rack), 99, 40, DRAWS);
    boolean you = false;
    boolean somebody = false;
    for (int place = Deal.DEALT; place < deal.size(); place++) {
      boolean out = WAITED.contains(deal.tile(place));
      int turn = place - Deal.DEALT;
      you |= out && turn % Wall.PLAYERS == 0 && turn / Wall.PLAYERS < DRAWS;
      somebody |= out;
    }
    YOU_DRAW.add(you, wait.youDraw());
    ANYBODY_DRAWS.add(somebody, wait.anybodyDraws());
  }

  /** East passes the first three tiles dealt to her that are no jokers. */
  private static void pass(Deal deal, int[] rack) {
    int passed = 0;
    boolean came = false;
    for (int place = 0; place < Deal.DEALT && passed < 3; place++) {
      if (Deal.dealtTo(place) == 0 && deal.tile(place) != Tile.JOKER) {
        passed++;
        came |= WAITED.contains(deal.tile(place));
      }
    }
    int candidates = 131 + rack[Tile.JOKER];
    PASSED.add(came, new TilesDrawn(candidates, outs(rack), 3).atLeast(1));
  }

  private static double chiSquare(long[] seen, Counted counted) {
    double sum = 0;
    for (int cell = 0; cell < seen.length; cell++) {
      boolean last = cell == seen.length - 1;
      double expected = N * (last ? counted.atLeast(cell) : counted.exactly(cell));
      sum += (seen[cell] - expected) * (seen[cell] - expected) / expected;
    }
    return sum;
  }

  @Test
  void jokersAndFlowers_areDealtAsOftenAsTheSumsSay() {
    assertThat(chiSquare(JOKERS, new TilesDrawn(152, 8, 13))).isLessThan(33.376842);
    assertThat(chiSquare(FLOWERS_OF_EAST, new TilesDrawn(152, 8, 14))).isLessThan(33.376842);
  }

  @Test
  void copies_ofOneKind_areDealtAsOftenAsTheSumsSay() {
    assertThat(chiSquare(COPIES, new TilesDrawn(152, 4, 13))).isLessThan(30.664850);
  }

  @Test
  void pairs_areDealtAsOftenAsTheSumsSay() {
    assertThat(chiSquare(PAIRS, new KindsHeld(TileSet.USUAL, 13, 2))).isLessThan(35.888187);
    assertThat(chiSquare(PAIRS_OF_EAST, new KindsHeld(TileSet.USUAL, 14, 2))).isLessThan(35.888187);
  }

  @Test
  void waitedTiles_comeAsOftenAsTheSumsSay() {
    assertThat(YOU_DRAW.z()).isBetween(-Z, Z);
    assertThat(ANYBODY_DRAWS.z()).isBetween(-Z, Z);
  }

  @Test
  void wantedTiles_arePassedAsOftenAsTheSumsSay() {
    assertThat(PASSED.z()).isBetween(-Z, Z);
  }

  /** Sums for East, where South was dealt, would be found out. */
  @Test
  void anotherSum_isFoundOut() {
    assertThat(chiSquare(JOKERS, new TilesDrawn(152, 8, 14))).isGreaterThan(33.376842);
    assertThat(chiSquare(PAIRS, new KindsHeld(TileSet.USUAL, 14, 2))).isGreaterThan(35.888187);
  }
}
