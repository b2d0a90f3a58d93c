package org.tallywall.strategies.guess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.player.NearestPlayer;

/** Guesses in the passes, in games by five tables of rules. */
class PassedTilesTest {
  private final HandMeter meter = new HandMeter();
  private int looked;
  private double away;
  private double dealt;
  private double racks;
  private double held;
  private double chance;

  private static PassedTiles guess() {
    return new PassedTiles(Collections.nCopies(4, NearestPlayer::new));
  }

  private static Position world(PassedTiles guess, SeatView view, RandomStream random, int world) {
    Position position = new Position();
    position.begin(view, random);
    guess.look(view);
    guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
    return position;
  }

  private static boolean blind(SeatView view) {
    return view.passes().stream()
        .anyMatch(pass -> pass.blind().stream().mapToInt(n -> n).sum() > 0);
  }

  /** Nobody has passed on yet what was given in the last pass. */
  @Test
  void tilesGivenLast_areWithWhoeverGotThem() {
    PassedTiles guess = guess();
    AskedSeats.play(
        40,
        NearestPlayer::new,
        3,
        (view, random) -> {
          List<SeatView.PassSeen> passes = view.passes();
          boolean told = PassedTiles.fits(view) && !passes.isEmpty() && !blind(view);
          SeatView.PassSeen last = told ? passes.get(passes.size() - 1) : null;
          if (told && last.step() != null) {
            Rack given = Rack.of(last.given().stream().mapToInt(n -> n).toArray());
            Position position = world(guess, view, random, 1);
            assertThat(given.isPartOf(position.rack(last.step().to(view.seat())))).isTrue();
            looked++;
          }
        });
    assertThat(looked).isGreaterThan(100);
  }

  /** The seat's own rack is as it is in every world, however the passes went. */
  @Test
  void ownRack_staysAsItIs() {
    PassedTiles guess = guess();
    AskedSeats.play(
        10,
        NearestPlayer::new,
        2,
        (view, random) -> {
          if (PassedTiles.fits(view)) {
            Rack own = new Rack();
            view.copyRack(own);
            assertThat(world(guess, view, random, 3).rack(view.seat())).isEqualTo(own);
            looked++;
          }
        });
    assertThat(looked).isGreaterThan(50);
  }

  /**
   * No world has a tile too many or too few. Players that throw what they were passed have the same
   * tiles go around, so that one that had to come in may be on its way elsewhere.
   */
  @Test
  void everyWorld_holdsEachKindAsOftenAsTheSet() {
    PassedTiles guess = guess();
    AskedSeats.play(
        60,
        NearestPlayer::new,
        3,
        (view, random) -> {
          if (PassedTiles.fits(view)) {
            for (int world = 0; world < 3; world++) {
              assertThat(copies(world(guess, view, random, world), view))
                  .isEqualTo(
                      IntStream.range(0, Tile.KINDS)
                          .map(view.table().rules().tiles()::copies)
                          .toArray());
            }
            looked++;
          }
        });
    assertThat(looked).isGreaterThan(300);
  }

  private static int[] copies(Position position, SeatView view) {
    int[] copies = new int[Tile.KINDS];
    for (int seat = 0; seat < 4; seat++) {
      for (int kind : position.rack(seat).tiles()) {
        copies[kind]++;
      }
    }
    for (int at = 0; at < view.wallLeft(); at++) {
      copies[position.wall(at)]++;
    }
    return copies;
  }

  /**
   * After passes the others stand nearer to a hand than tiles dealt at random, by a tile or more.
   */
  @Test
  void racksAfterPasses_areNearerThanAsDealt() {
    PassedTiles guess = guess();
    AskedSeats.play(
        10,
        NearestPlayer::new,
        3,
        (view, random) -> {
          if (PassedTiles.fits(view) && view.passes().size() >= 3) {
            Position position = world(guess, view, random, 1);
            int[] wall = new int[13];
            for (int at = 0; at < wall.length; at++) {
              wall[at] = position.wall(at);
            }
            int seat = (view.seat() + 1) % 4;
            meter.hold(position.rack(seat));
            away += meter.least(view.table().hands().closed());
            meter.hold(Rack.of(wall));
            dealt += meter.least(view.table().hands().closed());
            racks++;
          }
        });
    assertThat(racks).isGreaterThan(20);
    assertThat(away / racks).isLessThan(dealt / racks - 1);
  }

  /**
   * Before the first pass: how often the next seat holds at least one of a kind, over all kinds,
   * beside the exact chance 1 − C(unseen − n, size) / C(unseen, size). 8,000 racks; the kinds of
   * one rack hang together so that fewer of one mean more of another, hence no more than 34 times
   * 0.25 of variance a rack: a standard deviation of at most 0.033 for the mean number of kinds.
   * The window is five of them; a fresh seed would leave it once in 1.7 million.
   */
  @Test
  void beforeTheFirstPass_allUnseenTilesAreEquallyLikely() {
    PassedTiles guess = guess();
    AskedSeats.play(
        1,
        NearestPlayer::new,
        1000,
        (view, random) -> {
          Position position = new Position();
          position.begin(view, random);
          guess.look(view);
          int seat = (view.seat() + 1) % 4;
          int unseen = view.wallLeft();
          for (int other = 0; other < 4; other++) {
            unseen += other == view.seat() ? 0 : other == 0 ? 14 : 13;
          }
          for (int world = 0; world < 8000; world++) {
            guess.deal(view, random.beside(Purpose.ROLLOUT, 2 * world), position);
            held += Long.bitCount(position.rack(seat).kinds()) / 8000.0;
          }
          for (int kind = 0; kind < Tile.KINDS; kind++) {
            double none = 1;
            for (int tile = 0; tile < position.rack(seat).total(); tile++) {
              none *= (unseen - view.unseen(kind) - tile) / (double) (unseen - tile);
            }
            chance += 1 - none;
          }
        });
    assertThat(chance).isGreaterThan(5);
    assertThat(held).isCloseTo(chance, within(0.17));
  }
}
