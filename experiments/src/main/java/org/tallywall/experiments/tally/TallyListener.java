package org.tallywall.experiments.tally;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;
import org.tallywall.experiments.tally.EndTally.End;

/**
 * Counts the games that it hears, into the tally and for the seats that were chosen before the
 * game. Not safe for use by several threads.
 */
public final class TallyListener implements GameListener {
  private static final int PASSED = 3;

  private final Distances distances = new Distances();
  private final int[] exposures = new int[Seats.COUNT];
  private final int[] exchanges = new int[Seats.COUNT];
  private final int[] aim = new int[Seats.COUNT];
  private final int[] aimAfterPasses = new int[Seats.COUNT];
  private final SeatGame[] seatGames = new SeatGame[Seats.COUNT];
  private final TableTally[] tallies = new TableTally[Seats.COUNT];
  private List<Counting> countings = List.of();
  private int seats;
  private int stoodStill;

  /** A listener that counts nothing until it is told where. */
  public TallyListener() {
    Arrays.setAll(seatGames, seat -> new SeatGame());
  }

  /**
   * Says where the next games are counted.
   *
   * @param into takes the counts
   * @param mask the seats counted, as bits; bit 0 is East
   */
  public void count(TableTally into, int mask) {
    countings = List.of(new Counting(into, mask));
    sit();
  }

  /**
   * Says where each seat of the next games is counted.
   *
   * @param into four different tallies, for East first
   */
  public void countEach(List<TableTally> into) {
    List<Counting> each = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      each.add(new Counting(into.get(seat), 1 << seat));
    }
    countings = each;
    sit();
  }

  private void sit() {
    seats = 0;
    for (Counting counting : countings) {
      seats |= counting.mask();
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        if (counting.counts(seat)) {
          tallies[seat] = counting.tally();
        }
      }
    }
  }

  /**
   * What a seat made of the game that ended last.
   *
   * @param seat one of those counted
   * @return its numbers, live until the next game ends
   */
  public SeatGame seatGame(int seat) {
    return seatGames[seat];
  }

  private boolean counts(int seat) {
    return (seats >> seat & 1) == 1;
  }

  @Override
  public boolean wantsAims() {
    return true;
  }

  @Override
  public boolean wantsAimsOf(int seat) {
    return counts(seat);
  }

  @Override
  public void began(OpenTable table) {
    Arrays.fill(exposures, 0);
    Arrays.fill(exchanges, 0);
    Arrays.fill(aim, Player.NO_AIM);
    Arrays.fill(aimAfterPasses, Player.NO_AIM);
    distances.begin(table);
    distances.measureAll(seats);
    countings.forEach(counting -> counting.began(distances));
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    int pass = step.ordinal();
    stoodStill = from == Seats.EAST ? 0 : stoodStill;
    if (counts(from)) {
      tallies[from].passes().addBlind(pass, PASSED - own.length);
    }
    stoodStill += own.length == 0 && forwarded.length == 0 ? 1 : 0;
    if (from == Seats.COUNT - 1) {
      if (stoodStill == Seats.COUNT) {
        countings.forEach(counting -> counting.tally().passes().addVoid(pass));
      }
      measure(pass);
    }
  }

  private void measure(int pass) {
    distances.measureAll(seats);
    countings.forEach(counting -> counting.passed(pass, distances));
  }

  @Override
  public void stopAsked(int stoppers) {
    countings.forEach(counting -> counting.stopAsked(stoppers));
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    if (counts(low)) {
      tallies[low].passes().addCourtesy(asked[0], lowGave.length);
    }
    if (counts(Seats.across(low))) {
      tallies[Seats.across(low)].passes().addCourtesy(asked[1], highGave.length);
    }
    if (low == 1) {
      measure(PassTally.COURTESY);
    }
  }

  @Override
  public void drew(int seat, int tile) {
    distances.changed(seat);
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    exchanges[seat]++;
    distances.changed(seat);
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    exposures[seat]++;
    distances.changed(seat);
  }

  @Override
  public void discarded(int seat, int tile) {
    if (counts(seat)) {
      distances.settled(seat);
    }
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    if (!counts(seat)) {
      return;
    }
    switch (moment) {
      case AFTER_DEAL -> countAim(seat, line, AimTally.Count.AFTER_DEAL);
      case AFTER_PASSES -> {
        aimAfterPasses[seat] = line;
        aim[seat] = line;
      }
      case IN_PLAY -> switched(seat, line);
      case AT_END -> {
        switched(seat, line);
        countAim(seat, line, AimTally.Count.AT_END);
      }
    }
  }

  private void countAim(int seat, int line, AimTally.Count what) {
    if (line != Player.NO_AIM) {
      TableTally tally = tallies[seat];
      tally.line(line).counts().add(what);
      tally.family(tally.families().of(line)).counts().add(what);
    }
  }

  private void switched(int seat, int line) {
    int before = aim[seat];
    if (line == before) {
      return;
    }
    aim[seat] = line;
    if (before != Player.NO_AIM && line != Player.NO_AIM) {
      TableTally tally = tallies[seat];
      tally.line(before).counts().add(AimTally.Count.SWITCHED_FROM);
      tally.line(line).counts().add(AimTally.Count.SWITCHED_TO);
      int oldFamily = tally.families().of(before);
      int newFamily = tally.families().of(line);
      if (oldFamily != newFamily) {
        tally.family(oldFamily).counts().add(AimTally.Count.SWITCHED_FROM);
        tally.family(newFamily).counts().add(AimTally.Count.SWITCHED_TO);
      }
    }
  }

  @Override
  public void ended(Outcome outcome) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (counts(seat)) {
        seatGames[seat].end(
            seat, outcome, distances.reachedOneAway(seat), exposures[seat], exchanges[seat]);
        seatEnded(seat, outcome);
        aimEnded(seat, outcome.win());
      }
    }
    End end = end(outcome);
    countings.forEach(counting -> counting.ended(end, outcome));
    Outcome.Win win = outcome.win();
    if (win != null && counts(win.seat())) {
      TableTally tally = tallies[win.seat()];
      lineWon(tally.line(win.line()), outcome);
      lineWon(tally.family(tally.families().of(win.line())), outcome);
    }
  }

  private void seatEnded(int seat, Outcome outcome) {
    SeatGame game = seatGames[seat];
    TableTally tally = tallies[seat];
    tally.seat(seat).wins().add(game.won() ? 1 : 0);
    tally.seat(seat).points().add(game.points());
    count(seat, game.went(), 1);
    count(seat, SeatTally.Count.EXPOSURES, game.exposures());
    count(seat, SeatTally.Count.EXCHANGES, game.exchanges());
    count(seat, SeatTally.Count.ONE_AWAY, game.oneAway() ? 1 : 0);
    if (game.won()) {
      count(seat, SeatTally.Count.WON_AFTER_REDEEMING, game.exchanges() > 0 ? 1 : 0);
      count(seat, SeatTally.Count.WON_JOKERLESS, outcome.win().jokerless() ? 1 : 0);
      count(seat, SeatTally.Count.WALL_AT_WIN, outcome.wall());
      count(seat, SeatTally.Count.JOKERS_AT_WIN, outcome.win().jokers());
    }
  }

  private void count(int seat, SeatTally.Count what, long number) {
    tallies[seat].seat(seat).counts().add(what, number);
    tallies[seat].all().counts().add(what, number);
  }

  private void aimEnded(int seat, Outcome.Win win) {
    int line = aimAfterPasses[seat];
    if (line == Player.NO_AIM) {
      return;
    }
    boolean won = win != null && win.seat() == seat;
    TableTally tally = tallies[seat];
    int family = tally.families().of(line);
    tally.line(line).aimed(won, won && win.line() == line);
    tally.family(family).aimed(won, won && tally.families().of(win.line()) == family);
  }

  private void lineWon(AimTally line, Outcome outcome) {
    int seat = outcome.win().seat();
    line.counts().add(AimTally.Count.WINS);
    line.counts().add(AimTally.Count.WALL, outcome.wall());
    line.counts().add(AimTally.Count.JOKERS, outcome.win().jokers());
    line.counts().add(AimTally.Count.EXPOSURES, exposures[seat]);
    line.counts().add(AimTally.Count.POINTS, outcome.points().get(seat));
  }

  private static End end(Outcome outcome) {
    return switch (outcome.how()) {
      case WALL_GAME -> End.WALL_GAME;
      case VOID -> End.VOID;
      case MAHJONG -> byWin(outcome.win().by());
    };
  }

  private static End byWin(WinBy by) {
    return switch (by) {
      case DRAW -> End.DRAW;
      case EXCHANGE -> End.EXCHANGE;
      case DISCARD -> End.DISCARD;
      case DEAL -> End.DEAL;
    };
  }
}
