package org.tallywall.experiments.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.experiments.tally.AimTally.Count;

/**
 * Who aimed at what, changed to what and won with what, counted a second time: the aims from a list
 * of all that players said, game by game, the wins from the records. Two games make a deal, so that
 * a deal may hold several who aim at a line and several who win with it.
 */
class AimCountsTest {
  private static final int GAMES = 400;

  /** Lines of the card, from its first to its last. */
  private static final int LINES = 5;

  /** Families of these lines. */
  private static final int[] FAMILY = {0, 0, 1, 1, 2};

  private static TableTally tally;
  private static final List<Played> PLAYED = new ArrayList<>();

  /** What a player said once. */
  private record Said(int seat, AimMoment moment, int line) {}

  /** A game: what was said in it, who won and with which line, both -1 where nobody did. */
  private record Played(List<Said> said, int winner, int line) {
    /** The line that a seat named last at a moment; -1 where it named none. */
    int named(int seat, AimMoment moment) {
      int line = -1;
      for (Said one : said) {
        line = one.seat() == seat && one.moment() == moment ? one.line() : line;
      }
      return line;
    }
  }

  @BeforeAll
  static void play() {
    TableSetup setup = Tables.setup();
    tally = new TableTally(setup);
    TallyListener counting = new TallyListener();
    counting.count(tally, Tables.EVERY_SEAT);
    Game counted = new Game(setup, Tables.players(true), counting);
    List<Said> said = new ArrayList<>();
    Game heard = new Game(setup, Tables.players(true), hearing(said));
    GameRecorder recorder = new GameRecorder();
    Game recorded = new Game(setup, Tables.players(true), recorder);
    for (long number = 0; number < GAMES; number++) {
      Deal deal = Deal.of(77, number, setup.rules().tiles());
      counted.play(deal);
      if (number % 2 == 1) {
        tally.endDeal();
      }
      heard.play(deal);
      recorded.play(deal);
      GameRecord.Win win = recorder.record(header(number)).end().win();
      PLAYED.add(
          new Played(
              List.copyOf(said),
              win == null ? -1 : win.seat(),
              win == null ? -1 : place(setup.hands(), win.line())));
      said.clear();
    }
  }

  private static GameListener hearing(List<Said> said) {
    return new GameListener() {
      @Override
      public boolean wantsAims() {
        return true;
      }

      @Override
      public void aimed(int seat, AimMoment moment, int line) {
        said.add(new Said(seat, moment, line));
      }
    };
  }

  private static GameRecord.Header header(long deal) {
    return new GameRecord.Header(
        "", 77, deal, deal, "", -1, new GameRecord.CardName("", ""), Map.of(), List.of());
  }

  private static int place(ConcreteHands hands, String id) {
    int at = 0;
    while (!hands.line(at).id().equals(id)) {
      at++;
    }
    return at;
  }

  @Test
  void lines_countedFromWhatWasSaidAndRecorded_agree() {
    for (int line = 0; line < LINES; line++) {
      assertAgree("line " + line, tally.line(line), counted(line, place -> place));
    }
  }

  /** A change from one line of a family to another is none, and each of its lines is "it". */
  @Test
  void families_countedFromWhatWasSaidAndRecorded_agree() {
    for (int family = 0; family < 3; family++) {
      assertAgree(
          "family " + family,
          tally.family(family),
          counted(family, place -> place < 0 ? -1 : FAMILY[place]));
    }
  }

  /** Otherwise the counts above could be mixed up without anybody seeing it. */
  @Test
  void games_ofTheTest_tellTheCountsApart() {
    Map<Count, Long> first = counted(0, place -> place);

    assertThat(first.get(Count.AIMED_AND_WON_WITH_IT)).isPositive();
    assertThat(first.get(Count.AIMED_AND_WON))
        .isGreaterThan(first.get(Count.AIMED_AND_WON_WITH_IT));
    assertThat(first.get(Count.WINS)).isGreaterThan(first.get(Count.AIMED_AND_WON_WITH_IT));
    assertThat(first.get(Count.WON_WITH_IT_SQUARED))
        .isGreaterThan(first.get(Count.AIMED_AND_WON_WITH_IT));
    assertThat(first.get(Count.SWITCHED_TO)).isPositive();
    assertThat(first.get(Count.SWITCHED_TO)).isNotEqualTo(first.get(Count.SWITCHED_FROM));
  }

  private static void assertAgree(String what, AimTally tally, Map<Count, Long> again) {
    again.forEach(
        (count, number) ->
            assertThat(tally.counts().get(count)).as(what + " " + count).isEqualTo(number));
  }

  /** The counts of a line or a family; a place on the card is turned into one of these. */
  private static Map<Count, Long> counted(int what, IntUnaryOperator of) {
    Map<Count, Long> counts = new EnumMap<>(Count.class);
    for (int first = 0; first < GAMES; first += 2) {
      long aimed = 0;
      long won = 0;
      long withIt = 0;
      for (Played game : PLAYED.subList(first, first + 2)) {
        add(counts, Count.WINS, of.applyAsInt(game.line()) == what ? 1 : 0);
        for (int seat = 0; seat < 4; seat++) {
          seat(counts, game, seat, what, of);
          boolean here = of.applyAsInt(game.named(seat, AimMoment.AFTER_PASSES)) == what;
          boolean wins = here && game.winner() == seat;
          aimed += here ? 1 : 0;
          won += wins ? 1 : 0;
          withIt += wins && of.applyAsInt(game.line()) == what ? 1 : 0;
        }
      }
      add(counts, Count.AFTER_PASSES, aimed);
      add(counts, Count.AIMED_SQUARED, aimed * aimed);
      add(counts, Count.AIMED_AND_WON, won);
      add(counts, Count.WON_SQUARED, won * won);
      add(counts, Count.WON_TIMES_AIMED, won * aimed);
      add(counts, Count.AIMED_AND_WON_WITH_IT, withIt);
      add(counts, Count.WON_WITH_IT_SQUARED, withIt * withIt);
      add(counts, Count.WON_WITH_IT_TIMES_AIMED, withIt * aimed);
    }
    return counts;
  }

  private static void seat(
      Map<Count, Long> counts, Played game, int seat, int what, IntUnaryOperator of) {
    add(counts, Count.AFTER_DEAL, is(game.named(seat, AimMoment.AFTER_DEAL), what, of));
    add(counts, Count.AT_END, is(game.named(seat, AimMoment.AT_END), what, of));
    List<Integer> course = new ArrayList<>();
    for (Said one : game.said()) {
      if (one.seat() == seat && one.moment() != AimMoment.AFTER_DEAL) {
        course.add(of.applyAsInt(one.line()));
      }
    }
    for (int at = 1; at < course.size(); at++) {
      int before = course.get(at - 1);
      int after = course.get(at);
      boolean changed = before != after && before >= 0 && after >= 0;
      add(counts, Count.SWITCHED_FROM, changed && before == what ? 1 : 0);
      add(counts, Count.SWITCHED_TO, changed && after == what ? 1 : 0);
    }
  }

  private static long is(int line, int what, IntUnaryOperator of) {
    return of.applyAsInt(line) == what ? 1 : 0;
  }

  private static void add(Map<Count, Long> counts, Count count, long number) {
    counts.merge(count, number, Long::sum);
  }
}
