package org.tallywall.experiments.tally;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.TableSetup;

/**
 * Sums of a few deals by hand, and blocks added up number by number. That {@code StudyTally.carry}
 * names its parts is seen where the layout of stored blocks is pinned; that {@code NumberReader}
 * gives up after ten bytes and not after eleven makes no difference, for there is no number
 * between.
 */
class TallySumsTest {
  private static final TableSetup SETUP = Tables.setup();
  private static final TallyPlan PLAN = new TallyPlan(2, 2, 3, 2, 2);

  /** One tally holds 1, 2, 3 …, the other a million times as much: the sum shows both. */
  @Test
  void blocks_addedUp_addEveryNumber() throws IllegalAccessException {
    StudyTally ones = new StudyTally(PLAN, SETUP);
    StudyTally millions = new StudyTally(PLAN, SETUP);
    long[] last = {0, 0};
    CarrierTest.walk(ones, number -> ++last[0]);
    CarrierTest.walk(millions, number -> 1_000_000 * ++last[1]);
    ones.add(millions);

    List<Long> found = new ArrayList<>();
    CarrierTest.walk(
        ones,
        number -> {
          found.add(number);
          return number;
        });
    assertThat(found).hasSize((int) last[0]);
    for (int at = 0; at < found.size(); at++) {
      assertThat(found.get(at)).isEqualTo(1_000_001L * (at + 1));
    }
  }

  @Test
  void tallies_ofDifferentStudies_areNotAdded() {
    StudyTally one = new StudyTally(PLAN, SETUP);
    StudyTally other = new StudyTally(new TallyPlan(2, 2, 3, 2, 1), SETUP);

    assertThatThrownBy(() -> one.add(other)).isInstanceOf(IllegalArgumentException.class);
    assertThat(one.plan()).isEqualTo(PLAN);
    assertThat(one.contests()).hasSize(2);
  }

  @Test
  void deals_andGames_areCounted_andComparisonsKeptApart() {
    StudyTally tally = new StudyTally(PLAN, SETUP);
    tally.endDeal(5);
    tally.endDeal(3);
    tally.pair(1, 0).addDeal(new long[] {1}, new long[] {0});

    assertThat(tally.deals()).isEqualTo(2);
    assertThat(tally.games()).isEqualTo(8);
    assertThat(tally.pair(1, 0).deals()).isEqualTo(1);
    assertThat(tally.pair(0, 1).deals()).isZero();
    assertThat(tally.pair(1, 1).deals()).isZero();
    assertThat(tally.firing(2)).isNotSameAs(tally.firing(1));
  }

  /** Gains of 5 in one game and of -3 in two, and a deal that did not come to it. */
  @Test
  void firings_ofThreeDeals_areTheSumsByHand() {
    FiringTally tally = new FiringTally(2);
    tally.addDeal(4, 1, 30, new long[] {5, 0});
    tally.addDeal(4, 2, 50, new long[] {-3, 1});
    tally.addDeal(4, 0, 0, new long[] {0, 0});

    assertThat(
            List.of(
                tally.deals(),
                tally.seatGames(),
                tally.games(),
                tally.wall(),
                tally.compared(),
                tally.reached()))
        .containsExactly(3L, 12L, 3L, 80L, 3L, 2L);
    EffectTally effect = tally.effect(0);
    assertThat(
            List.of(
                effect.difference(),
                effect.games(),
                effect.differenceSquared(),
                effect.gamesSquared(),
                effect.product(),
                effect.cubes(),
                effect.squaresTimesGames(),
                effect.timesGamesSquared(),
                effect.gamesCubed()))
        .extracting(ExactSum::value)
        .extracting(BigInteger::intValueExact)
        .containsExactly(2, 3, 34, 5, -1, 98, 43, -7, 9);
    assertThat(List.of(effect.more(), effect.fewer())).containsExactly(1L, 1L);
    assertThat(List.of(tally.effect(1).more(), tally.effect(1).fewer())).containsExactly(1L, 0L);
  }

  /** All four seats of a deal fit into the sizes; points beyond them are in the sums alone. */
  @Test
  void pairs_ofFourSeats_areSortedByTheirSize() {
    PairTally tally = new PairTally();
    tally.addDeal(new long[] {1, 1, 1, 1}, new long[4]);
    tally.addDeal(new long[4], new long[] {1, 1, 1, 1});
    tally.addDeal(new long[] {5}, new long[] {0});
    tally.addDeal(new long[] {1, 0}, new long[] {0, 1});

    assertThat(tally.ofSize(4)).isEqualTo(1);
    assertThat(tally.ofSize(-4)).isEqualTo(1);
    assertThat(tally.ofSize(0)).isEqualTo(1);
    assertThat(List.of(tally.deals(), tally.differing(), tally.more(), tally.fewer()))
        .containsExactly(4L, 4L, 2L, 1L);
  }

  /** Three games; then a left pass in which nobody moves a tile, and one in which somebody does. */
  @Test
  void passes_inWhichNothingMoves_areCountedAsSuch() {
    TableTally tally = new TableTally(SETUP);
    TallyListener listener = new TallyListener();
    listener.count(tally, Tables.EVERY_SEAT);
    Tables.play(listener, 0, 3);
    int left = PassStep.LEFT_1.ordinal();
    assertThat(tally.passes().racks(left)).isEqualTo(12);
    long stopped = tally.passes().stopped();
    listener.stopAsked(5);
    assertThat(tally.passes().stopped()).isEqualTo(stopped + 1);

    long before = tally.passes().voids(left);
    for (int mover : new int[] {-1, 2}) {
      for (int seat = 0; seat < 4; seat++) {
        int[] moved = seat == mover ? new int[] {1, 2, 3} : new int[0];
        listener.passed(PassStep.LEFT_1, seat, moved, new int[0]);
      }
    }
    assertThat(tally.passes().voids(left)).isEqualTo(before + 1);
  }

  /** Four tallies at once, each for one seat, are those of four runs with one seat each. */
  @Test
  void eachSeat_countedAtOnce_isAsCountedAlone() {
    List<TableTally> each = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      each.add(new TableTally(SETUP));
    }
    TallyListener listener = new TallyListener();
    listener.countEach(each);
    for (long deal = 0; deal < 6; deal++) {
      Tables.play(listener, deal, 1);
      each.forEach(TableTally::endDeal);
    }
    for (int seat = 0; seat < 4; seat++) {
      TableTally alone = new TableTally(SETUP);
      TallyListener one = new TallyListener();
      one.count(alone, 1 << seat);
      for (long deal = 0; deal < 6; deal++) {
        Tables.play(one, deal, 1);
        alone.endDeal();
      }
      assertThat(each.get(seat)).usingRecursiveComparison().isEqualTo(alone);
      assertThat(listener.seatGame(seat).points()).isEqualTo(one.seatGame(seat).points());
    }
  }

  /** Wins of the players of a table are the digits of its pattern, to the base five. */
  @Test
  void contests_readBack_giveEachPlayersWins() {
    ContestTally tally = new ContestTally();
    tally.addDeal(new int[] {2, 0, 1, 1});
    int pattern = 2 * 125 + 5 + 1;

    assertThat(tally.deals(pattern)).isEqualTo(1);
    assertThat(tally.deals(pattern + 1)).isZero();
    assertThat(List.of(0, 1, 2, 3).stream().map(player -> ContestTally.wins(pattern, player)))
        .containsExactly(2, 0, 1, 1);
  }

  /** Three things are said to follow, two bytes do. */
  @Test
  void number_ofThingsThatCannotFollow_isRefused() {
    assertThatThrownBy(() -> new NumberReader(new byte[] {6, 0, 0}).count())
        .isInstanceOf(UncheckedIOException.class);
    assertThat(new NumberReader(new byte[] {4, 0, 0}).count()).isEqualTo(2);
  }
}
