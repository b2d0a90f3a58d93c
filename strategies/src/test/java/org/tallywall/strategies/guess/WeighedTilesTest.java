package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.player.NearestPlayer;

/** Guesses in hundreds of positions, in the passes and in play, by five tables of rules. */
class WeighedTilesTest {
  private static final List<Supplier<Player>> PLAYERS = Collections.nCopies(4, NearestPlayer::new);

  private int positions;

  private static WeighedTiles guess() {
    return new WeighedTiles(PLAYERS, Collections.nCopies(4, "nearest"));
  }

  @Test
  void guesses_holdEveryUnseenTileOnce() {
    WeighedTiles guess = guess();
    AskedSeats.play(
        10,
        NearestPlayer::new,
        6,
        (view, random) -> {
          guess.look(view);
          Position position = new Position();
          position.begin(view, random);
          for (int world = 0; world < 2; world++) {
            guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
            everyTileOnce(view, position);
          }
          positions++;
        });
    assertThat(positions).isGreaterThan(200);
  }

  private static void everyTileOnce(SeatView view, Position position) {
    int[] wall = IntStream.range(0, view.wallLeft()).map(position::wall).toArray();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int number = kind;
      long found = Arrays.stream(wall).filter(tile -> tile == number).count();
      for (int seat = 0; seat < 4; seat++) {
        found += seat == view.seat() ? 0 : position.rack(seat).held(kind);
      }
      assertThat(found).as("tile %d", kind).isEqualTo(view.unseen(kind));
    }
    for (int seat = 0; seat < 4; seat++) {
      int exposed = view.exposures(seat).stream().mapToInt(Exposure::size).sum();
      boolean first = seat == 0 && PassedTiles.fits(view);
      if (seat != view.seat()) {
        assertThat(position.rack(seat).total()).isEqualTo((first ? 14 : 13) - exposed);
      }
    }
  }

  /** One object has guessed before and the other has not; both begin at another world. */
  @Test
  void guesses_areTheSameForTheSameNumbers() {
    WeighedTiles one = guess();
    AskedSeats.play(
        5,
        NearestPlayer::new,
        23,
        (view, random) -> {
          WeighedTiles other = guess();
          String late = worlds(one, view, random, 0, 1, 2);
          String early = worlds(other, view, random, 2);
          assertThat(early).isEqualTo(late);
          positions++;
        });
    assertThat(positions).isGreaterThan(30);
  }

  /** The last of some worlds in writing. */
  private static String worlds(Guess guess, SeatView view, RandomStream random, int... worlds) {
    guess.look(view);
    Position position = new Position();
    position.begin(view, random);
    for (int world : worlds) {
      guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
    }
    StringBuilder text = new StringBuilder();
    for (int seat = 0; seat < 4; seat++) {
      text.append(position.rack(seat)).append('\n');
    }
    IntStream.range(0, view.wallLeft())
        .map(position::wall)
        .forEach(t -> text.append(t).append(' '));
    return text.toString();
  }

  @Test
  void effective_isOneToTheNumberProposedInPlayAndNothingInThePasses() {
    WeighedTiles guess = guess();
    AskedSeats.play(
        3,
        NearestPlayer::new,
        11,
        (view, random) -> {
          worlds(guess, view, random, 0, 1, 2, 3);
          for (int seat = 0; seat < 4; seat++) {
            boolean none = seat == view.seat() || PassedTiles.fits(view);
            assertThat(guess.effective(seat)).isBetween(none ? 0 : 1.0, none ? 0 : 7.0);
          }
          positions++;
        });
    assertThat(positions).isGreaterThan(30);
  }
}
