package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.guess.LikelyTiles;

/** South is one tile away and must throw; the last choice keeps the hand, the others break it. */
class PlayoutsTest {
  private static final ConcreteHands HANDS =
      TestTable.card("{ \"tiles\": \"NNNN 111b 222c 3333d\", \"value\": 25 }");
  private static final SeatView VIEW = new HandMadeView(HANDS, "NNNN 111b 222c 333d E");
  private static final int[] THROWN = {
    TileText.tile("1b"), TileText.tile("2c"), TileText.tile("N"), TileText.tile("E")
  };

  private final List<Integer> tried = new ArrayList<>();
  private int worlds;

  private int best(Effort effort, int choices) {
    LikelyTiles tiles = new LikelyTiles();
    Guess counting =
        new Guess() {
          @Override
          public void look(SeatView view) {
            tiles.look(view);
          }

          @Override
          public void deal(SeatView view, RandomStream random, Position into) {
            worlds++;
            tiles.deal(view, random, into);
          }
        };
    RandomStream random = new RandomStream(new StreamKey(5, 6, Purpose.DECISION, 1, 0, 7));
    return new Playouts(counting, List.of(NearestPlayer::new), effort)
        .best(
            VIEW,
            random,
            choices,
            (own, at) -> {
              tried.add(at);
              own.turn(TurnChoice.discard(THROWN[at]));
            });
  }

  @Test
  void choiceThatKeepsTheHand_isTakenHoweverItIsTried() {
    assertThat(best(new Effort(80, 2, false), 4)).isEqualTo(3);
    assertThat(best(new Effort(80, 2, true), 4)).isEqualTo(3);
  }

  @Test
  void allAlike_shareThePlayoutsInTheSameWorlds() {
    best(new Effort(80, 2, false), 4);
    assertThat(worlds).isEqualTo(20);
    assertThat(tried).hasSize(80).startsWith(0, 1, 2, 3, 0, 1, 2, 3);
  }

  /** Ten worlds for four choices, then twenty for the usual one and the best of the others. */
  @Test
  void halving_triesOnlyTheBetterOnesFurther() {
    best(new Effort(80, 2, true), 4);
    assertThat(worlds).isEqualTo(30);
    assertThat(tried).hasSize(80);
    assertThat(tried.subList(40, 80)).containsOnly(0, 3);
  }

  @Test
  void surenessThatCannotBeReached_leavesTheUsualChoice() {
    assertThat(best(new Effort(80, 1000, true), 4)).isZero();
  }

  @Test
  void oneChoice_isTakenWithoutPlayouts() {
    assertThat(best(new Effort(80, 2, true), 1)).isZero();
    assertThat(worlds).isZero();
  }
}
