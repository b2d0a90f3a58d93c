package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.TestCards;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.random.ChiSquare;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;

/** Where the tiles of a blind pass go (2.3.7 to 2.3.10), tried for every combination. */
class BlindPassesTest {
  private static final long SEED = 1_234_321L;
  private static final TableSetup SETUP =
      new TableSetup(new ConcreteHands(TestCards.testCard()), TableRules.STANDARD);

  private final GameState state = new GameState(SETUP);

  /** Seat s sets out so many tiles, told apart by their kinds: 3s, 3s + 1, 3s + 2. */
  private BlindPasses pass(long deal, PassStep step, int... own) {
    state.begin(Deal.of(SEED, deal, TileSet.USUAL));
    PassChoice[] choices = new PassChoice[4];
    for (int seat = 0; seat < 4; seat++) {
      int[] tiles = new int[own[seat]];
      for (int at = 0; at < tiles.length; at++) {
        tiles[at] = 3 * seat + at;
      }
      choices[seat] = PassChoice.of(tiles);
    }
    return new BlindPasses(state, step, choices);
  }

  private static boolean nothingMoves(PassStep step, int[] own, int seat) {
    boolean across = step.to(step.to(seat)) == seat;
    int out = 0;
    for (int other = 0; other < 4; other++) {
      out += !across || other == seat || other == step.to(seat) ? own[other] : 0;
    }
    return out == 0;
  }

  @ParameterizedTest
  @EnumSource(PassStep.class)
  void everyCombination_handsThreeOnAndKeepsAsManyAsSetOut(PassStep step) {
    for (int code = 0; code < 256; code++) {
      int[] own = {code & 3, code >> 2 & 3, code >> 4 & 3, code >> 6};
      BlindPasses moves = pass(code, step, own);
      List<Integer> set = new ArrayList<>();
      List<Integer> kept = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        int handed = own[seat] + moves.forwarded(seat).length;
        assertThat(handed).isEqualTo(nothingMoves(step, own, seat) ? 0 : 3);
        assertThat(moves.received(seat)).as("kept by %d", seat).hasSize(own[seat]);
        kept.addAll(moves.received(seat));
        for (int at = 0; at < own[seat]; at++) {
          set.add(3 * seat + at);
        }
        incomingIsKeptOrHandedOn(moves, step, own, seat);
      }
      assertThat(kept).containsExactlyInAnyOrderElementsOf(set);
    }
  }

  /** What a seat keeps and hands on unseen is what came in: own and forwarded of the one before. */
  private static void incomingIsKeptOrHandedOn(
      BlindPasses moves, PassStep step, int[] own, int seat) {
    int before = (4 + seat - (step.to(0))) % 4;
    List<Integer> incoming = new ArrayList<>();
    for (int at = 0; at < own[before]; at++) {
      incoming.add(3 * before + at);
    }
    Arrays.stream(moves.forwarded(before)).forEach(incoming::add);
    List<Integer> used = new ArrayList<>(moves.received(seat));
    Arrays.stream(moves.forwarded(seat)).forEach(used::add);
    assertThat(used).containsExactlyInAnyOrderElementsOf(incoming);
  }

  @Test
  void sameSeed_handsTheSameTilesOn() {
    for (int code = 0; code < 256; code++) {
      int[] own = {code & 3, code >> 2 & 3, code >> 4 & 3, code >> 6};
      BlindPasses one = pass(99, PassStep.LEFT_1, own);
      BlindPasses two = pass(99, PassStep.LEFT_1, own);
      for (int seat = 0; seat < 4; seat++) {
        assertThat(two.forwarded(seat)).containsExactly(one.forwarded(seat));
      }
    }
  }

  /**
   * Hypothesis: a passer's blind tiles are any of the incoming three alike. n = 30,000 deals each,
   * 3 cells, df = 2, critical 27.631 (Commons Math 3.6.1, 1e-6), seed fixed: one fresh seed in a
   * million would raise a false alarm.
   */
  @ParameterizedTest
  @org.junit.jupiter.params.provider.ValueSource(ints = {1, 2})
  void blindTiles_areDrawnEvenly(int own) {
    Map<String, Long> counts = new TreeMap<>();
    for (int deal = 0; deal < 30_000; deal++) {
      int[] on = pass(deal, PassStep.LEFT_1, 3, own, 3, 3).forwarded(1);
      Arrays.sort(on);
      counts.merge(Arrays.toString(on), 1L, Long::sum);
    }
    assertThat(counts).hasSize(3);
    long[] cells = counts.values().stream().mapToLong(Long::longValue).toArray();
    assertThat(ChiSquare.even(cells)).isLessThan(27.631);
  }

  /**
   * Hypothesis: where all owe, which own tile goes on first is drawn evenly too: East sets out two,
   * the others one each. n = 30,000, 2 cells, df = 1, critical 23.928 (1e-6), seed fixed.
   */
  @Test
  void owedTiles_goOnInEvenOrder() {
    long[] cells = new long[2];
    for (int deal = 0; deal < 30_000; deal++) {
      cells[pass(deal, PassStep.RIGHT_2, 2, 1, 1, 1).forwarded(1)[0]]++;
    }
    assertThat(ChiSquare.even(cells)).isLessThan(23.928);
  }
}
