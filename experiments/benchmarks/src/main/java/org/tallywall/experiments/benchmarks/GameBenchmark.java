package org.tallywall.experiments.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.catalog.Catalog;

/** One whole game of four equal players, the deal included. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class GameBenchmark {
  /** Deals are played in a round of so many, so that every measurement meets the same ones. */
  private static final int DEALS = 4096;

  /** Who sits at the table; {@code counts} is the baseline. */
  @Param({"random-legal", "newcomer", "nearest", "reckoner", "watchful", "counts"})
  public String player;

  /** Least number of concrete hands of the card; 0 for the card of the demo studies. */
  @Param({"0"})
  public int hands;

  /** Whether the tiles are passed before play. */
  @Param({"true"})
  public boolean passes;

  private Game game;
  private long number;

  /** For the harness. */
  public GameBenchmark() {}

  /** Draws the card and seats the players. */
  @Setup
  public void seat() {
    ConcreteHands card = BenchmarkCards.of(hands);
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(
          player.equals("counts")
              ? new CountsPlayer(card)
              : Catalog.standard().type(player).orElseThrow().maker().get());
    }
    TableRules rules =
        passes
            ? TableRules.STANDARD
            : TableRules.of(Map.of("charleston.first", "NONE", "charleston.courtesy", "NONE"));
    game = new Game(new TableSetup(card, rules), players, GameListener.NONE);
  }

  /**
   * One game.
   *
   * @return how it ended
   */
  @Benchmark
  public Outcome game() {
    number = (number + 1) % DEALS;
    return game.play(Deal.of(1, number, TileSet.USUAL));
  }
}
