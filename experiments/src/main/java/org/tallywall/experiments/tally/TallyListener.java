package org.tallywall.experiments.tally;

import java.util.Arrays;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;
import org.tallywall.experiments.tally.EndTally.End;

/** Counts the games that it hears. Not safe for use by several threads. */
public final class TallyListener implements GameListener {
  private static final int PASSED = 3;

  private final TableSetup setup;
  private final Distances distances = new Distances();
  private final int[] exposures = new int[Seats.COUNT];
  private final int[] exchanges = new int[Seats.COUNT];
  private final int[] aim = new int[Seats.COUNT];
  private final int[] aimAfterPasses = new int[Seats.COUNT];
  private TableTally tally;
  private int away;
  private int stoodStill;

  /**
   * A listener with an empty tally.
   *
   * @param setup the card and the rules
   */
  public TallyListener(TableSetup setup) {
    this.setup = setup;
    this.tally = new TableTally(setup);
  }

  /**
   * Hands the tally over and begins a new one.
   *
   * @return what was counted since the last time
   */
  public TableTally take() {
    TableTally finished = tally;
    tally = new TableTally(setup);
    return finished;
  }

  @Override
  public boolean wantsAims() {
    return true;
  }

  @Override
  public void began(OpenTable table) {
    Arrays.fill(exposures, 0);
    Arrays.fill(exchanges, 0);
    Arrays.fill(aim, Player.NO_AIM);
    Arrays.fill(aimAfterPasses, Player.NO_AIM);
    distances.begin(table);
    away = distances.measureAll();
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    int pass = step.ordinal();
    stoodStill = from == Seats.EAST ? 0 : stoodStill;
    tally.passes().addBlind(pass, PASSED - own.length);
    stoodStill += own.length == 0 && forwarded.length == 0 ? 1 : 0;
    if (from == Seats.COUNT - 1) {
      if (stoodStill == Seats.COUNT) {
        tally.passes().addVoid(pass);
      }
      measure(pass);
    }
  }

  private void measure(int pass) {
    int before = away;
    away = distances.measureAll();
    tally.passes().addPass(pass, before, away);
  }

  @Override
  public void stopAsked(int stoppers) {
    tally.passes().addStop(Integer.bitCount(stoppers));
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    tally.passes().addCourtesy(asked[0], lowGave.length);
    tally.passes().addCourtesy(asked[1], highGave.length);
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
    distances.settled(seat);
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    switch (moment) {
      case AFTER_DEAL -> count(line, AimTally.Count.AFTER_DEAL);
      case AFTER_PASSES -> {
        aimAfterPasses[seat] = line;
        aim[seat] = line;
      }
      case IN_PLAY -> switched(seat, line);
      case AT_END -> {
        switched(seat, line);
        count(line, AimTally.Count.AT_END);
      }
    }
  }

  private void count(int line, AimTally.Count what) {
    if (line != Player.NO_AIM) {
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
    Outcome.Win win = outcome.win();
    long points = 0;
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      seatEnded(seat, outcome);
      points += outcome.points().get(seat);
      aimEnded(seat, win);
    }
    tally.all().wins().add(win == null ? 0 : 1);
    tally.all().points().add(points);
    tally.ends().add(end(outcome), outcome.wall());
    if (win != null) {
      lineWon(tally.line(win.line()), outcome);
      lineWon(tally.family(tally.families().of(win.line())), outcome);
    }
    tally.endDeal();
  }

  private void seatEnded(int seat, Outcome outcome) {
    boolean won = outcome.win() != null && outcome.win().seat() == seat;
    tally.seat(seat).wins().add(won ? 1 : 0);
    tally.seat(seat).points().add(outcome.points().get(seat));
    count(seat, SeatCounts.of(seat, outcome), 1);
    count(seat, SeatTally.Count.EXPOSURES, exposures[seat]);
    count(seat, SeatTally.Count.EXCHANGES, exchanges[seat]);
    count(seat, SeatTally.Count.ONE_AWAY, won || distances.reachedOneAway(seat) ? 1 : 0);
    if (won) {
      count(seat, SeatTally.Count.WON_AFTER_REDEEMING, exchanges[seat] > 0 ? 1 : 0);
      count(seat, SeatTally.Count.WON_JOKERLESS, outcome.win().jokerless() ? 1 : 0);
      count(seat, SeatTally.Count.WALL_AT_WIN, outcome.wall());
      count(seat, SeatTally.Count.JOKERS_AT_WIN, outcome.win().jokers());
    }
  }

  private void count(int seat, SeatTally.Count what, long number) {
    tally.seat(seat).counts().add(what, number);
    tally.all().counts().add(what, number);
  }

  private void aimEnded(int seat, Outcome.Win win) {
    int line = aimAfterPasses[seat];
    if (line == Player.NO_AIM) {
      return;
    }
    boolean won = win != null && win.seat() == seat;
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
