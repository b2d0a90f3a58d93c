package org.tallywall.strategies.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.player.NearestPlayer;
import org.tallywall.strategies.player.RandomLegalPlayer;

/** Judging by distance, against measuring every hand place by place, in positions of real games. */
@Tag("one-jdk")
class NearnessTest {
  /** Judges of one seat, kept through all games, so that what they remember is tested as well. */
  private static final class Judged implements Player {
    private final Player player;
    private final Nearness kept = new Nearness();
    private final Nearness glances = new Nearness();
    private int positions;
    private int dead;

    Judged(Player player) {
      this.player = player;
    }

    private void judge(SeatView view) {
      PlainNearness plain = new PlainNearness(view);
      positions++;
      dead += plain.least == 99 ? 1 : 0;
      glances.glance(view);
      same(glances, plain, view);
      kept.look(view);
      same(kept, plain, view);
      spare(plain, view);
    }

    private static void same(Nearness judge, PlainNearness plain, SeatView view) {
      assertThat(judge.least()).isEqualTo(plain.least);
      assertThat(judge.aim()).isEqualTo(plain.aim);
      assertThat(judge.ways()).isEqualTo(plain.ways);
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        assertThat(judge.wantsNow(kind)).isEqualTo(plain.wantsNow(kind));
        if (view.held(kind) > 0) {
          assertThat(judge.stranger(kind)).as(Tile.symbol(kind)).isEqualTo(plain.stranger(kind));
        }
      }
    }

    /** Takes the three tiles most easily spared, one after the other. */
    private void spare(PlainNearness plain, SeatView view) {
      int[] left = new int[Tile.KINDS];
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        left[kind] = view.held(kind);
      }
      for (int taken = 0; taken < 3; taken++) {
        int expected = mostSpare(plain, view, left);
        assertThat(kept.mostSpare(true)).isEqualTo(expected);
        kept.take(expected);
        left[expected]--;
      }
    }

    private static int mostSpare(PlainNearness plain, SeatView view, int[] left) {
      Comparator<Integer> order =
          Comparator.<Integer>comparingLong(kind -> plain.wantedBy(kind, left[kind]).get(0))
              .thenComparingLong(kind -> plain.wantedBy(kind, left[kind]).get(1))
              .thenComparingLong(kind -> plain.wantedBy(kind, left[kind]).get(2))
              .thenComparingInt(kind -> -view.faceUp(kind))
              .thenComparingInt(kind -> kind);
      return java.util.stream.IntStream.range(0, Tile.NATURALS)
          .boxed()
          .filter(kind -> left[kind] > 0)
          .min(order)
          .orElse(Tile.JOKER);
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return player.declares(view, random);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      judge(view);
      return player.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return player.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      judge(view);
      return player.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return player.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      if (view.rackSize() >= 3) {
        judge(view);
      }
      return player.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      if (view.rackSize() >= 3) {
        judge(view);
      }
      return player.turn(view, random);
    }
  }

  @Test
  void card_isLargeEnoughForTheRememberingMeter() {
    assertThat(TestTable.HANDS.size()).isGreaterThan(200);
  }

  /** 60 games by the rules of five tables, of seats that try and seats that play by lot. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void judgment_isThatOfMeasuringEveryHand(boolean whole) {
    List<Judged> seats =
        List.of(
            new Judged(new NearestPlayer()),
            new Judged(new RandomLegalPlayer()),
            new Judged(new NearestPlayer()),
            new Judged(new RandomLegalPlayer()));
    ConcreteHands hands = whole ? TestTable.HANDS : few();
    for (int deal = 0; deal < 60; deal++) {
      TableRules rules = TestTable.rulesOf(deal);
      new Game(new TableSetup(hands, rules), seats, GameListener.NONE)
          .play(Deal.of(TestTable.SEED, deal, rules.tiles()));
    }
    assertThat(seats.stream().mapToInt(seat -> seat.positions).sum()).isGreaterThan(4000);
    assertThat(seats.stream().mapToInt(seat -> seat.dead).sum()).isPositive();
  }

  private static ConcreteHands few() {
    return TestTable.card(
        "{ \"tiles\": \"FF 22x 333y 4444x 555y\", \"value\": 25 }",
        "{ \"tiles\": \"NNNN EE WW SSS RRR\", \"value\": 30 }",
        "{ \"tiles\": \"nnnnx nnnny nnnnz FF\", \"value\": 30 }",
        "{ \"tiles\": \"222x 444x 66y 888y 000\", \"value\": 25, \"jokers\": false }",
        "{ \"tiles\": \"RRRR GGGG 0000 NN\", \"value\": 35, \"concealed\": true }");
  }
}
