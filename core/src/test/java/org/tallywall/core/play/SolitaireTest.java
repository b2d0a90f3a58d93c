package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.random.ChiSquare;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * A game for one: 13 tiles, then one drawn and one thrown at a time, until a fixed hand is made. It
 * joins walls, racks, concrete hands and the distance measure, and its chances are known exactly.
 *
 * <p>The figures were found by three means (the polynomials of {@link SolitaireChances}, a Markov
 * chain over copies held, and 20,000,000 simulated decks in a separate program), and are worked out
 * again here. Simulated: n = 100,000 walls, seed {@value #SEED}, fixed. A count must lie in the
 * exact binomial window with at most 5e-7 in each tail, so each line would raise a false alarm for
 * one fresh seed in a million; fits: {@link ChiSquare}.
 */
@Tag("one-jdk")
class SolitaireTest {
  private static final long SEED = 271_828L;
  private static final int N = 100_000;
  private static final int NEVER = 200;
  private static final int T4 = 0;
  private static final int T4N = 1;
  private static final int K3 = 2;
  private static final int P7 = 3;
  private static final int TWIN = 4;
  private static final ConcreteHands HANDS =
      new ConcreteHands(
          CardFile.json(
                  "solitaire.json",
                  """
                  {"card": "Solitaire", "families": [{"family": "S", "lines": [
                    {"id": "T4", "tiles": "111b 555c 999d NNN RR", "value": 25},
                    {"id": "T4n", "tiles": "111b 555c 999d NNN RR", "value": 25, "jokers": false},
                    {"id": "K3", "tiles": "FF 2222b 4444c 6666d", "value": 25},
                    {"id": "P7", "tiles": "33b 44b 77b 22c 88c 11d 77d", "value": 25},
                    {"id": "Twin", "tiles": "111b 555c 999d SSS RR", "value": 25}
                  ]}]}
                  """)
              .orThrow());

  /** For each wall and hand, after how many draws it was made. */
  private static int[][] made;

  @BeforeAll
  static void play() {
    made = new int[N][];
    for (int number = 0; number < N; number++) {
      Deal deal = Deal.of(SEED, number, TileSet.USUAL);
      made[number] = new int[HANDS.size()];
      for (int hand = 0; hand < HANDS.size(); hand++) {
        made[number][hand] = draws(deal, hand, 139);
      }
    }
  }

  /**
   * Plays one wall: keeps what the hand can still use, throws the rest, and stops when it is made.
   */
  private static int draws(Deal deal, int hand, int most) {
    Rack rack = new Rack();
    for (int place = 0; place < 13; place++) {
      rack.add(deal.tile(place));
    }
    HandMeter meter = new HandMeter();
    for (int draw = 1; draw <= most; draw++) {
      int tile = deal.tile(12 + draw);
      rack.add(tile);
      if (!surplus(rack, tile, hand)) {
        meter.hold(rack);
        if (meter.away(HANDS.closed(), hand) == 0) {
          return draw;
        }
        tile = anySurplus(rack, hand);
      }
      rack.remove(tile);
    }
    return NEVER;
  }

  private static boolean surplus(Rack rack, int tile, int hand) {
    return tile == Tile.JOKER
        ? hand == P7 || hand == T4N
        : rack.held(tile) > HANDS.hand(hand).total(tile);
  }

  /** A tile to throw; a joker where the groups are full and only loose tiles lack. */
  private static int anySurplus(Rack rack, int hand) {
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (rack.held(kind) > 0 && surplus(rack, kind, hand)) {
        return kind;
      }
    }
    return Tile.JOKER;
  }

  private static SolitaireChances chances(int hand) {
    SolitaireChances chances = new SolitaireChances();
    if (hand == P7) {
      for (int pair = 0; pair < 7; pair++) {
        chances.group(2, 4, false);
      }
      return chances;
    }
    int size = hand == K3 ? 4 : 3;
    for (int group = 0; group < (hand == K3 ? 3 : 4); group++) {
      chances.group(size, 4, hand != T4N);
    }
    return chances.group(2, hand == K3 ? 8 : 4, false);
  }

  @ParameterizedTest
  @CsvSource({
    "10, 0.000000212010, 0.000000000043, 0.000000060161, 0.000000005542",
    "25, 0.000538484775, 0.000000302585, 0.000176405657, 0.000021308415",
    "40, 0.024502696954, 0.000042640251, 0.009795930134, 0.001597179594",
    "50, 0.111609459699, 0.000440744216, 0.052775426899, 0.010687330795",
    "60, 0.299758374021, 0.002817884197, 0.171850842243, 0.043847628166",
    "70, 0.546976738280, 0.012629113661, 0.384353931804, 0.125448087146",
    "80, 0.757950239650, 0.042809290565, 0.641386447240, 0.271518247501",
    "90, 0.883904464368, 0.115168700342, 0.852273459253, 0.470360547084",
    "100, 0.946052531714, 0.253560815348, 0.963382230245, 0.680650210485",
    "110, 0.977806898679, 0.465341566679, 0.996034431785, 0.852861746275",
    "120, 0.993788915210, 0.717930733295, 0.999919616147, 0.957033546749"
  })
  void chances_c1_workedOutAgain_areTheFigures(
      int draws, double t4, double t4n, double k3, double p7) {
    assertThat(chances(T4).by(draws)).isCloseTo(t4, within(6e-13));
    assertThat(chances(T4N).by(draws)).isCloseTo(t4n, within(6e-13));
    assertThat(chances(K3).by(draws)).isCloseTo(k3, within(6e-13));
    assertThat(chances(P7).by(draws)).isCloseTo(p7, within(6e-13));
  }

  /** C1: how many of 100,000 walls were won by a draw. */
  @ParameterizedTest
  @CsvSource({
    "T4, 0, 50, 10677, 11651",
    "T4, 0, 60, 29269, 30686",
    "T4, 0, 70, 53927, 55467",
    "T4, 0, 90, 87892, 88883",
    "K3, 2, 60, 16604, 17771",
    "K3, 2, 70, 37684, 39189",
    "K3, 2, 90, 84676, 85774",
    "P7, 3, 90, 46264, 47808",
    "P7, 3, 110, 84736, 85831",
    "Twin, 4, 60, 29269, 30686"
  })
  void walls_c1_areWonAsOftenAsExpected(String name, int hand, int draws, int least, int most) {
    assertThat(won(hand, draws)).as(name).isBetween(least, most);
  }

  /** The line without jokers, at 100 draws: 25,356 expected, 4.891638 standard errors of 137.6. */
  @Test
  void walls_c1WithoutJokers_areWonAsOftenAsExpected() {
    assertThat(won(T4N, 100)).isBetween(24_683, 26_029);
  }

  private static int won(int hand, int draws) {
    int won = 0;
    for (int[] wall : made) {
      won += wall[hand] <= draws ? 1 : 0;
    }
    return won;
  }

  /** C1: the whole distribution of draws for T4 in 14 cells, df = 13. */
  @Test
  void draws_c1_fitTheLaw() {
    int[] edges = {45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100, 110, 139};
    SolitaireChances law = chances(T4);
    double[] chances = new double[edges.length];
    long[] counts = new long[edges.length];
    for (int cell = 0; cell < edges.length; cell++) {
      int from = cell == 0 ? 0 : edges[cell - 1];
      chances[cell] = law.by(edges[cell]) - (cell == 0 ? 0 : law.by(from));
      counts[cell] = won(T4, edges[cell]) - (cell == 0 ? 0 : won(T4, from));
    }
    assertThat(chances[0]).isCloseTo(0.056496104901, within(1e-12));
    assertThat(chances[13]).isCloseTo(0.022193101321, within(1e-12));
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(52.7471);
  }

  /** C1: two hands on the same wall at 70 draws: both, only T4, only K3, neither; df = 3. */
  @Test
  void twoHandsOnOneWall_c1_areCorrelatedAsExpected() {
    long[] counts = pairs(T4, K3, 70);
    double[] chances = {0.230892224982, 0.316084513298, 0.153461706822, 0.299561554899};
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(30.664850);
    assertThat(counts[0]).isBetween(22_439L, 23_743L);
  }

  /** C1: two hands that differ in one group, at 60 draws. */
  @Test
  void nearTwinsOnOneWall_c1_areCorrelatedAsExpected() {
    long[] counts = pairs(T4, TWIN, 60);
    double[] chances = {0.236921118319, 0.062837255702, 0.062837255702, 0.637404370277};
    assertThat(ChiSquare.statistic(counts, chances)).isLessThan(30.664850);
    assertThat(counts[0]).isBetween(23_036L, 24_352L);
  }

  private static long[] pairs(int one, int two, int draws) {
    long[] counts = new long[4];
    for (int[] wall : made) {
      counts[(wall[one] <= draws ? 0 : 2) + (wall[two] <= draws ? 0 : 1)]++;
    }
    return counts;
  }

  /** C1: T4 within 38 tiles, all that a seat sees in a game without claims; 1,000,000 walls. */
  @Test
  @Tag("long")
  void thirtyEightTiles_c1_makeTheHandAsOftenAsExpected() {
    int won = 0;
    for (int number = 0; number < 1_000_000; number++) {
      won += draws(Deal.of(SEED, number, TileSet.USUAL), T4, 25) <= 25 ? 1 : 0;
    }
    assertThat(won).isBetween(429, 656);
  }
}
