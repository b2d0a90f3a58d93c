package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** Writes down the game that it hears. */
public final class GameRecorder implements GameListener {
  private final List<GameEvent> events = new ArrayList<>();
  private OpenTable table;
  private Outcome outcome;

  /** Nothing heard yet. */
  public GameRecorder() {}

  @Override
  public void began(OpenTable open) {
    table = open;
    outcome = null;
    events.clear();
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    events.add(new GameEvent.Pass(step.text(), from, step.to(from), list(own), list(forwarded)));
  }

  @Override
  public void stopAsked(int stoppers) {
    events.add(new GameEvent.Stop(seats(stoppers)));
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    events.add(
        new GameEvent.Courtesy(
            List.of(low, Seats.across(low)), list(asked), List.of(list(lowGave), list(highGave))));
  }

  @Override
  public void drew(int seat, int tile) {
    events.add(new GameEvent.Draw(seat, tile));
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    events.add(new GameEvent.Exchange(seat, owner, exposure, tile));
  }

  @Override
  public void discarded(int seat, int tile) {
    events.add(new GameEvent.Discard(seat, tile));
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    int jokers = laid.jokers() - (tile == Tile.JOKER ? 1 : 0);
    events.add(
        new GameEvent.Claim(
            seat, from, tile, laid.kind(), laid.size(), jokers, losers(also, alsoMahjong)));
  }

  @Override
  public void died(int seat) {
    events.add(new GameEvent.Dead(seat));
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    events.add(new GameEvent.Mahjong(seat, by.text(), from, losers(also, alsoMahjong)));
  }

  @Override
  public void ended(Outcome how) {
    outcome = how;
    if (how.how() == Outcome.How.WALL_GAME) {
      events.add(new GameEvent.WallGame());
    } else if (how.how() == Outcome.How.VOID) {
      events.add(new GameEvent.VoidGame());
    }
  }

  /**
   * How many events of the game have been written down so far.
   *
   * @return 0 or more
   */
  public int events() {
    return events.size();
  }

  /**
   * The record of the game heard last.
   *
   * @param header what was played, by whom
   * @return the record
   * @throws IllegalStateException if no game was heard to its end
   */
  public GameRecord record(GameRecord.Header header) {
    if (outcome == null) {
      throw new IllegalStateException("no game was heard to its end");
    }
    Deal deal = table.deal();
    List<Integer> wall = new ArrayList<>();
    for (int at = 0; at < deal.size(); at++) {
      wall.add(deal.tile(at));
    }
    return new GameRecord(
        header, wall, List.of(deal.die(0), deal.die(1)), events, end(table.setup().hands()));
  }

  private GameRecord.End end(ConcreteHands hands) {
    GameRecord.Win win = null;
    if (outcome.win() != null) {
      Outcome.Win won = outcome.win();
      Line line = hands.line(won.line());
      win =
          new GameRecord.Win(
              won.seat(),
              won.by().text(),
              won.from(),
              line.id(),
              hands.hand(won.hand()).words(),
              line.value(),
              won.jokerless());
    }
    return new GameRecord.End(outcome.how().text(), win, outcome.points(), outcome.wall());
  }

  private static GameEvent.Losers losers(int exposures, int mahjongs) {
    return new GameEvent.Losers(seats(exposures), seats(mahjongs));
  }

  private static List<Integer> seats(int mask) {
    List<Integer> seats = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if ((mask >> seat & 1) != 0) {
        seats.add(seat);
      }
    }
    return List.copyOf(seats);
  }

  private static List<Integer> list(int[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
