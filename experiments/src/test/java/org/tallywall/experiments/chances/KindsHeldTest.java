package org.tallywall.experiments.chances;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import org.apache.commons.math3.fraction.BigFraction;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.tile.TileSet;

/** Pairs, threes, and fours in a deal, against other ways to count them. */
class KindsHeldTest {
  private static final Fractions EXACT = new Fractions();
  private static final Offset<Double> NEAR = Offset.offset(1e-15);
  private static final int KINDS = 34;

  /**
   * The chance of exactly so many pairs by another way: choose the kinds, then how many of them are
   * held three and four times; the other kinds are held once or not at all.
   */
  private static BigFraction pairs(TileSet set, int tiles, int pairs) {
    int others = set.flowers() + set.jokers();
    BigInteger ways = BigInteger.ZERO;
    for (int threes = 0; threes <= pairs; threes++) {
      for (int fours = 0; fours <= pairs - threes; fours++) {
        int twos = pairs - threes - fours;
        int held = 2 * twos + 3 * threes + 4 * fours;
        BigInteger which =
            EXACT
                .choose(KINDS, pairs)
                .multiply(EXACT.choose(pairs, threes))
                .multiply(EXACT.choose(pairs - threes, fours))
                .multiply(BigInteger.valueOf(6).pow(twos))
                .multiply(BigInteger.valueOf(4).pow(threes));
        for (int singles = 0; singles <= Math.min(KINDS - pairs, tiles - held); singles++) {
          ways =
              ways.add(
                  which
                      .multiply(EXACT.choose(KINDS - pairs, singles))
                      .multiply(BigInteger.valueOf(4).pow(singles))
                      .multiply(EXACT.choose(others, tiles - held - singles)));
        }
      }
    }
    return new BigFraction(ways, EXACT.choose(set.size(), tiles));
  }

  @ParameterizedTest
  @CsvSource({"8, 8, 13", "8, 8, 14", "4, 0, 13", "16, 12, 14", "8, 8, 1", "8, 8, 30"})
  void pairs_countedAnotherWay_areTheSame(int flowers, int jokers, int tiles) {
    TileSet set = new TileSet(flowers, jokers);
    KindsHeld pairs = new KindsHeld(set, tiles, 2);
    BigFraction all = BigFraction.ZERO;
    for (int count = 0; count <= tiles / 2; count++) {
      BigFraction exact = pairs(set, tiles, count);
      all = all.add(exact);
      assertThat(pairs.exactly(count)).isCloseTo(Fractions.number(exact), NEAR);
    }
    assertThat(all).isEqualTo(BigFraction.ONE);
    assertThat(pairs.least()).isZero();
    assertThat(pairs.most()).isEqualTo(tiles / 2);
  }

  /** At least one pair, three, or four; and on average 34 times the chance of one kind. */
  @ParameterizedTest
  @CsvSource({
    "13, 2, 0.789289162675, 1.254384545746",
    "14, 2, 0.840555249320, 1.449865795205",
    "13, 3, 0.063453998101, 0.064374603784",
    "14, 3, 0.079905958018, 0.081497048991",
    "13, 4, 0.001137237276, 0.001137360491",
    "14, 4, 0.001592017188, 0.001592304687"
  })
  void deal_hasTheChancesOfExactSums(int tiles, int alike, double any, double average) {
    KindsHeld held = new KindsHeld(TileSet.USUAL, tiles, alike);
    double kinds = KINDS * new TilesDrawn(152, 4, tiles).atLeast(alike);
    assertThat(held.atLeast(1)).isCloseTo(any, Offset.offset(1e-12));
    assertThat(held.average()).isCloseTo(average, Offset.offset(1e-12));
    assertThat(held.average()).isCloseTo(kinds, Offset.offset(1e-12));
  }

  @Test
  void allTiles_holdEveryKind() {
    KindsHeld all = new KindsHeld(TileSet.USUAL, 152, 2);
    assertThat(all.least()).isEqualTo(KINDS);
    assertThat(all.most()).isEqualTo(KINDS);
    assertThat(all.exactly(KINDS)).isEqualTo(1);
    assertThat(all.atLeast(KINDS + 1)).isZero();
    assertThat(all.exactly(-1)).isZero();
  }

  @ParameterizedTest
  @CsvSource({"-1, 2", "153, 2", "13, 0", "13, 5"})
  void numbers_outOfRange_areRefused(int tiles, int alike) {
    assertThatThrownBy(() -> new KindsHeld(TileSet.USUAL, tiles, alike))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
