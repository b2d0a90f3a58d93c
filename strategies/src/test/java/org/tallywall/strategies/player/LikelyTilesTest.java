package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.guess.LikelyTiles;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Whenever a player tries choices out, in games by five tables of rules, the guess holds every
 * unseen tile once, and racks that are nearer to a hand than tiles dealt at random.
 */
@Tag("one-jdk")
class LikelyTilesTest {
  private static final int DEALS = 10;

  @Test
  void guesses_holdEveryUnseenTileOnceAndAreTheSameForTheSameNumbers() {
    Checked checked = new Checked();
    play(checked);
    assertThat(checked.guesses).isGreaterThan(100L * DEALS);
  }

  /**
   * Racks are built up to the distance drawn; a few cannot be. Tiles dealt at random are some seven
   * tiles away on this card, which the mean of those guessed is to be far below.
   */
  @Test
  void guessedRacks_areNearerThanTilesDealtAtRandom() {
    Checked checked = new Checked();
    play(checked);
    assertThat(checked.away / (double) checked.racks).isBetween(2.0, 4.5);
    assertThat(checked.awayAtRandom / (double) checked.racks).isGreaterThan(6.0);
  }

  private static void play(Guess guess) {
    for (int deal = 0; deal < DEALS; deal++) {
      TestTable.play(
          deal,
          Stream.generate(
                  () ->
                      new RolloutPlayer(
                          new HabitPlayer(SettingValues.standard(HabitPlayer.reckoner())),
                          new Playouts(guess, List.of(NearestPlayer::new), new Effort(4, 0, false)),
                          2))
              .limit(4)
              .toList());
    }
  }

  /** Guesses as the player does, and looks at what was guessed. */
  private static final class Checked implements Guess {
    private final LikelyTiles tiles = new LikelyTiles();
    private final HandMeter meter = new HandMeter();
    private long guesses;
    private long racks;
    private long away;
    private long awayAtRandom;

    @Override
    public void look(SeatView view) {
      tiles.look(view);
    }

    @Override
    public boolean guessesWall() {
      return tiles.guessesWall();
    }

    @Override
    public void deal(SeatView view, RandomStream random, Position into) {
      Rack first = dealt(view, random, into);
      int[] wall = wall(view, into);
      assertThat(dealt(view, random, into).tiles()).isEqualTo(first.tiles());
      assertThat(wall(view, into)).isEqualTo(wall);
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        int number = kind;
        long inWall = Arrays.stream(wall).filter(tile -> tile == number).count();
        assertThat(first.held(kind) + inWall).as("tile %d", kind).isEqualTo(view.unseen(kind));
      }
      guesses++;
    }

    private int[] wall(SeatView view, Position into) {
      return IntStream.range(0, view.wallLeft()).map(into::wall).toArray();
    }

    /** All racks of the others together; each is measured. */
    private Rack dealt(SeatView view, RandomStream random, Position into) {
      tiles.deal(view, random.beside(Purpose.ROLLOUT, 1), into);
      RandomStream lots = random.beside(Purpose.ROLLOUT, 2);
      Rack all = new Rack();
      for (int seat = 0; seat < 4; seat++) {
        if (seat != view.seat()) {
          int size = 13 - view.exposures(seat).stream().mapToInt(Exposure::size).sum();
          assertThat(into.rack(seat).total()).isEqualTo(size);
          for (int tile : into.rack(seat).tiles()) {
            all.add(tile);
          }
          if (view.exposures(seat).isEmpty() && view.table().rules().tiles().size() == 152) {
            measure(view, into.rack(seat), lots);
          }
        }
      }
      return all;
    }

    private void measure(SeatView view, Rack guessed, RandomStream lots) {
      Reach reach = view.table().hands().closed();
      meter.hold(guessed);
      away += meter.least(reach, HandMeter.NONE);
      int[] set = view.table().rules().tiles().tiles();
      lots.shuffle(set, set.length);
      meter.hold(Rack.of(Arrays.copyOf(set, 13)));
      awayAtRandom += meter.least(reach, HandMeter.NONE);
      racks++;
    }
  }
}
