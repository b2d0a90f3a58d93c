package org.tallywall.experiments.tally;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.tile.Rack;
import org.tallywall.experiments.tally.SeatTally.Count;

/** The tally of 400 games against a second count of the same games from their records. */
class TallyListenerTest {
  private static final int DEALS = 400;

  private static TableTally tally;
  private static final List<GameRecord> RECORDS = new ArrayList<>();

  @BeforeAll
  static void play() {
    TableSetup setup = Tables.setup();
    tally = new TableTally(setup);
    TallyListener listener = new TallyListener();
    listener.count(tally, Tables.EVERY_SEAT);
    Game counted = new Game(setup, Tables.players(true), listener);
    GameRecorder recorder = new GameRecorder();
    Game recorded = new Game(setup, Tables.players(true), recorder);
    for (long deal = 0; deal < DEALS; deal++) {
      counted.play(Deal.of(31, deal, setup.rules().tiles()));
      tally.endDeal();
      recorded.play(Deal.of(31, deal, setup.rules().tiles()));
      RECORDS.add(
          recorder.record(
              new GameRecord.Header(
                  "",
                  31,
                  deal,
                  deal,
                  "",
                  -1,
                  new GameRecord.CardName("", ""),
                  Map.of(),
                  List.of())));
    }
  }

  @Test
  void games_ofTheTest_endInEveryUsualWay() {
    assertThat(tally.deals()).isEqualTo(DEALS);
    assertThat(tally.all().counts().get(Count.WON_ON_OWN_DRAW)).isPositive();
    assertThat(tally.all().counts().get(Count.WON_ON_DISCARD)).isPositive();
    assertThat(tally.all().counts().get(Count.WALL_GAME)).isPositive();
    assertThat(tally.all().counts().get(Count.EXCHANGES)).isPositive();
    assertThat(tally.all().counts().get(Count.WON_JOKERLESS)).isPositive();
  }

  @Test
  void seats_everyGame_goesToExactlyOneOfSixCounts() {
    for (int seat = 0; seat < 4; seat++) {
      long games = 0;
      for (Count count : List.of(Count.values()).subList(0, 6)) {
        games += tally.seat(seat).counts().get(count);
      }
      assertThat(games).isEqualTo(DEALS);
    }
  }

  @Test
  void seats_countedFromRecords_agree() {
    for (int seat = 0; seat < 4; seat++) {
      int at = seat;
      SeatTally one = tally.seat(seat);
      assertThat(one.counts().get(Count.WON_ON_OWN_DRAW))
          .isEqualTo(games(r -> wins(r, at) && !r.end().win().by().equals("discard")));
      assertThat(one.counts().get(Count.WON_ON_DISCARD))
          .isEqualTo(games(r -> wins(r, at) && r.end().win().by().equals("discard")));
      assertThat(one.counts().get(Count.THREW))
          .isEqualTo(games(r -> r.end().win() != null && r.end().win().from() == at));
      assertThat(one.counts().get(Count.WALL_GAME))
          .isEqualTo(games(r -> r.end().how().equals("wall-game")));
      assertThat(one.counts().get(Count.WON_JOKERLESS))
          .isEqualTo(games(r -> wins(r, at) && r.end().win().jokerless()));
      assertThat(one.counts().get(Count.WON_AFTER_REDEEMING))
          .isEqualTo(games(r -> wins(r, at) && exchanges(r, at) > 0));
      assertThat(one.counts().get(Count.EXCHANGES)).isEqualTo(sum(r -> exchanges(r, at)));
      assertThat(one.counts().get(Count.EXPOSURES)).isEqualTo(sum(r -> claims(r, at)));
      assertThat(one.counts().get(Count.WALL_AT_WIN))
          .isEqualTo(sum(r -> wins(r, at) ? r.end().wall() : 0));
      assertThat(one.wins().sum().value()).isEqualTo(big(games(r -> wins(r, at))));
      assertThat(one.points().sum().value()).isEqualTo(big(sum(r -> points(r, at))));
      assertThat(one.points().squares().value())
          .isEqualTo(big(sum(r -> points(r, at) * points(r, at))));
    }
  }

  @Test
  void allSeats_together_areTheSumOfTheFour() {
    for (Count count : Count.values()) {
      long sum = 0;
      for (int seat = 0; seat < 4; seat++) {
        sum += tally.seat(seat).counts().get(count);
      }
      assertThat(tally.all().counts().get(count)).as(count.name()).isEqualTo(sum);
    }
    assertThat(tally.all().wins().sum().value()).isEqualTo(big(games(r -> r.end().win() != null)));
    assertThat(tally.all().points().sum().value()).isEqualTo(BigInteger.ZERO);
  }

  @Test
  void ends_countedFromRecords_agree() {
    for (int wall = 0; wall <= tally.ends().most(); wall++) {
      int left = wall;
      assertThat(tally.ends().games(EndTally.End.DISCARD, wall))
          .isEqualTo(games(r -> endsBy(r, "discard", left)));
      assertThat(tally.ends().games(EndTally.End.DRAW, wall))
          .isEqualTo(games(r -> endsBy(r, "draw", left)));
      assertThat(tally.ends().games(EndTally.End.EXCHANGE, wall))
          .isEqualTo(games(r -> endsBy(r, "exchange", left)));
    }
    assertThat(tally.ends().games(EndTally.End.WALL_GAME, 0))
        .isEqualTo(games(r -> r.end().how().equals("wall-game")));
  }

  @Test
  void passes_countedFromRecords_agree() {
    List<String> steps = List.of("right-1", "across-1", "left-1", "left-2", "across-2", "right-2");
    for (int step = 0; step < steps.size(); step++) {
      String name = steps.get(step);
      assertThat(tally.passes().games(step)).isEqualTo(games(r -> !passes(r, name).isEmpty()));
      for (int blind = 0; blind <= 3; blind++) {
        int own = 3 - blind;
        assertThat(tally.passes().blind(step, blind))
            .isEqualTo(
                sum(
                    r ->
                        (int) passes(r, name).stream().filter(p -> p.own().size() == own).count()));
      }
    }
    assertThat(tally.passes().stopAsked())
        .isEqualTo(games(r -> r.events().stream().anyMatch(GameEvent.Stop.class::isInstance)));
    assertThat(tally.passes().stoppers())
        .isEqualTo(
            sum(
                r ->
                    r.events().stream()
                        .filter(GameEvent.Stop.class::isInstance)
                        .mapToInt(e -> ((GameEvent.Stop) e).seats().size())
                        .sum()));
    long courtesies = 0;
    long given = 0;
    for (int number = 0; number <= 3; number++) {
      courtesies += tally.passes().asked(number);
      given += number * tally.passes().gave(number);
    }
    assertThat(courtesies).isEqualTo(4 * tally.passes().games(PassTally.COURTESY));
    assertThat(given).isEqualTo(sum(TallyListenerTest::courtesyTiles));
  }

  @Test
  void lines_winsAndAims_addUp() {
    long wins = 0;
    long aimed = 0;
    long points = 0;
    for (int line = 0; line < 5; line++) {
      Counts<AimTally.Count> counts = tally.line(line).counts();
      wins += counts.get(AimTally.Count.WINS);
      points += counts.get(AimTally.Count.POINTS);
      aimed += counts.get(AimTally.Count.AFTER_PASSES);
      assertThat(counts.get(AimTally.Count.AIMED_AND_WON_WITH_IT))
          .isLessThanOrEqualTo(counts.get(AimTally.Count.AIMED_AND_WON));
    }
    assertThat(wins).isEqualTo(games(r -> r.end().win() != null));
    assertThat(points)
        .isEqualTo(sum(r -> r.end().win() == null ? 0 : points(r, r.end().win().seat())));
    // Seat 3 plays at random and aims at nothing; nobody is complete before play.
    assertThat(aimed).isEqualTo(3 * DEALS);
  }

  @Test
  void families_countsOfWins_areThoseOfTheirLines() {
    for (AimTally.Count count :
        List.of(AimTally.Count.WINS, AimTally.Count.AFTER_DEAL, AimTally.Count.POINTS)) {
      assertThat(tally.family(0).counts().get(count))
          .isEqualTo(tally.line(0).counts().get(count) + tally.line(1).counts().get(count));
    }
  }

  /**
   * The squares and products behind the interval, counted again from the aims heard in each deal.
   */
  @Test
  void aims_squaresAndProducts_areSumsOverDeals() {
    long[] aimedSquared = new long[5];
    long[] wonTimesAimed = new long[5];
    GameListener again =
        new GameListener() {
          private final int[] aim = new int[4];

          @Override
          public boolean wantsAims() {
            return true;
          }

          @Override
          public void aimed(int seat, AimMoment moment, int line) {
            if (moment == AimMoment.AFTER_PASSES) {
              aim[seat] = line;
            }
          }

          @Override
          public void ended(Outcome outcome) {
            for (int line = 0; line < 5; line++) {
              long aimers = 0;
              long winners = 0;
              for (int seat = 0; seat < 4; seat++) {
                boolean here = aim[seat] == line;
                aimers += here ? 1 : 0;
                winners += here && outcome.win() != null && outcome.win().seat() == seat ? 1 : 0;
              }
              aimedSquared[line] += aimers * aimers;
              wonTimesAimed[line] += winners * aimers;
            }
          }
        };
    Tables.play(again, 0, DEALS);
    for (int line = 0; line < 5; line++) {
      Counts<AimTally.Count> counts = tally.line(line).counts();
      assertThat(counts.get(AimTally.Count.AIMED_SQUARED)).isEqualTo(aimedSquared[line]);
      assertThat(counts.get(AimTally.Count.WON_TIMES_AIMED)).isEqualTo(wonTimesAimed[line]);
    }
  }

  /**
   * Distances measured seldom against distances measured after every discard, each from scratch.
   */
  @Test
  void oneAway_measuredAfterEveryDiscard_agrees() {
    long[] reached = new long[4];
    GameListener plain =
        new GameListener() {
          private final HandMeter meter = new HandMeter();
          private final boolean[] near = new boolean[4];
          private OpenTable table;
          private boolean playing;

          @Override
          public void began(OpenTable open) {
            table = open;
            playing = false;
            java.util.Arrays.fill(near, false);
          }

          @Override
          public void discarded(int seat, int tile) {
            if (!playing) {
              playing = true;
              for (int other = 1; other < 4; other++) {
                look(other);
              }
            }
            look(seat);
          }

          private void look(int seat) {
            SeatView view = table.view(seat);
            Rack rack = new Rack();
            view.copyRack(rack);
            meter.hold(rack);
            near[seat] |= meter.least(view.reach(seat)) <= 1;
          }

          @Override
          public void ended(Outcome outcome) {
            for (int seat = 0; seat < 4; seat++) {
              boolean won = outcome.win() != null && outcome.win().seat() == seat;
              reached[seat] += near[seat] || won ? 1 : 0;
            }
          }
        };
    Tables.play(plain, 0, DEALS);
    for (int seat = 0; seat < 4; seat++) {
      assertThat(tally.seat(seat).counts().get(Count.ONE_AWAY)).isEqualTo(reached[seat]);
    }
  }

  @Test
  void parts_addedInAnyOrder_areTheWhole() {
    TableTally first = new TableTally(Tables.setup());
    Tables.play(first, 150, DEALS - 150);
    TableTally second = new TableTally(Tables.setup());
    Tables.play(second, 0, 150);
    TableTally sum = new TableTally(Tables.setup());
    sum.add(first);
    sum.add(second);

    assertThat(sum).usingRecursiveComparison().isEqualTo(tally);
  }

  private static boolean wins(GameRecord game, int seat) {
    return game.end().win() != null && game.end().win().seat() == seat;
  }

  private static int points(GameRecord game, int seat) {
    return game.end().points().get(seat);
  }

  private static int exchanges(GameRecord game, int seat) {
    return (int)
        game.events().stream()
            .filter(e -> e instanceof GameEvent.Exchange x && x.seat() == seat)
            .count();
  }

  private static int claims(GameRecord game, int seat) {
    return (int)
        game.events().stream()
            .filter(e -> e instanceof GameEvent.Claim c && c.seat() == seat)
            .count();
  }

  private static List<GameEvent.Pass> passes(GameRecord game, String step) {
    return game.events().stream()
        .filter(e -> e instanceof GameEvent.Pass p && p.step().equals(step))
        .map(e -> (GameEvent.Pass) e)
        .toList();
  }

  private static int courtesyTiles(GameRecord game) {
    return game.events().stream()
        .filter(GameEvent.Courtesy.class::isInstance)
        .flatMap(e -> ((GameEvent.Courtesy) e).tiles().stream())
        .mapToInt(List::size)
        .sum();
  }

  private static boolean endsBy(GameRecord game, String by, int wall) {
    return game.end().win() != null
        && game.end().win().by().equals(by)
        && game.end().wall() == wall;
  }

  private static long games(java.util.function.Predicate<GameRecord> which) {
    return RECORDS.stream().filter(which).count();
  }

  private static long sum(java.util.function.ToIntFunction<GameRecord> number) {
    return RECORDS.stream().mapToLong(number::applyAsInt).sum();
  }

  private static BigInteger big(long number) {
    return BigInteger.valueOf(number);
  }
}
