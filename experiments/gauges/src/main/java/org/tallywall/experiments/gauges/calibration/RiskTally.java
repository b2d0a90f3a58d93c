package org.tallywall.experiments.gauges.calibration;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.read.OpponentReader;
import org.tallywall.strategies.read.ReadSettings;

/**
 * What readers say, before a tile is thrown, of each living opponent: how likely she wins on it,
 * and how likely she lays it open; beside what she did. Jokers are left out, since they cannot be
 * claimed.
 */
final class RiskTally implements GameListener {
  /** A way of reading. */
  record Way(String name, ReadSettings settings) {}

  private final List<Way> ways;
  private final List<OpponentReader> readers = new ArrayList<>();
  private final List<Score> wins = new ArrayList<>();
  private final List<Score> claims = new ArrayList<>();
  private final List<Bins> winBins = new ArrayList<>();
  private final Bins claimBins = bins();
  private final double[][] win;
  private final double[][] claim;
  private final boolean[] asked = new boolean[Seats.COUNT];
  private boolean thrown;
  private int winner = -1;
  private int claimer = -1;

  /**
   * A tally.
   *
   * @param ways ways of reading; the first is the one that the others are compared with
   */
  RiskTally(List<Way> ways) {
    this.ways = List.copyOf(ways);
    for (Way way : ways) {
      readers.add(new OpponentReader(way.settings()));
      wins.add(new Score());
      winBins.add(bins());
      claims.add(new Score());
    }
    win = new double[ways.size()][Seats.COUNT];
    claim = new double[ways.size()][Seats.COUNT];
  }

  private static Bins bins() {
    return new Bins(0, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.4);
  }

  /**
   * A tile is about to be thrown.
   *
   * @param view what the thrower knows
   * @param tile the tile
   */
  void discards(SeatView view, int tile) {
    settle();
    if (tile == Tile.JOKER) {
      return;
    }
    thrown = true;
    for (int other = 0; other < Seats.COUNT; other++) {
      asked[other] = other != view.seat() && !view.dead(other);
    }
    for (int way = 0; way < readers.size(); way++) {
      OpponentReader reader = readers.get(way);
      reader.look(view);
      for (int other = 0; other < Seats.COUNT; other++) {
        win[way][other] = reader.winChance(other, tile);
        claim[way][other] = reader.claimChance(other, tile);
      }
    }
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    claimer = seat;
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    winner = by == WinBy.DISCARD ? seat : -1;
  }

  @Override
  public void ended(Outcome outcome) {
    settle();
    winBins.forEach(Bins::endGame);
    claimBins.endGame();
    wins.forEach(Score::endGame);
    claims.forEach(Score::endGame);
  }

  private void settle() {
    for (int other = 0; thrown && other < Seats.COUNT; other++) {
      if (asked[other]) {
        settle(other);
      }
    }
    thrown = false;
    winner = -1;
    claimer = -1;
  }

  private void settle(int other) {
    boolean won = winner == other;
    boolean laid = claimer == other;
    claimBins.note(claim[0][other], claim[0][other], laid);
    for (int way = 0; way < readers.size(); way++) {
      wins.get(way).note(win[way][other], win[0][other], won);
      winBins.get(way).note(win[way][other], win[way][other], won);
      claims.get(way).note(claim[way][other], claim[0][other], laid);
    }
  }

  /** The ways of reading. */
  List<Way> ways() {
    return ways;
  }

  /** Wins on the tile, by what a way said. */
  Bins winBins(int way) {
    return winBins.get(way);
  }

  /** Exposures with the tile, by what the first way said. */
  Bins claimBins() {
    return claimBins;
  }

  /** Scores of the chances of wins, by way. */
  List<Score> winScores() {
    return wins;
  }

  /** Scores of the chances of exposures, by way. */
  List<Score> claimScores() {
    return claims;
  }
}
