package org.tallywall.experiments.benchmarks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.experiments.tally.TallyListener;
import org.tallywall.strategies.player.NearestPlayer;

/** What it costs to count a game of four {@code nearest} for a study. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TallyBenchmark {
  private static final int DEALS = 4096;
  private static final int EVERY_SEAT = 15;

  /** Who listens: nobody, the tally of a study, or a map with a name for each count. */
  @Param({"nobody", "tally", "map"})
  public String listener;

  private Game game;
  private TableTally tally;
  private long number;

  /** For the harness. */
  public TallyBenchmark() {}

  /** Seats the players. */
  @Setup
  public void seat() {
    TableSetup setup = new TableSetup(BenchmarkCards.demo(), TableRules.STANDARD);
    List<Player> players = Stream.<Player>generate(NearestPlayer::new).limit(4).toList();
    tally = new TableTally(setup);
    game = new Game(setup, players, listener());
  }

  private GameListener listener() {
    if (listener.equals("map")) {
      return new NamedCounts();
    } else if (listener.equals("tally")) {
      TallyListener counting = new TallyListener();
      counting.count(tally, EVERY_SEAT);
      return counting;
    }
    return GameListener.NONE;
  }

  /**
   * One game, counted.
   *
   * @return how it ended
   */
  @Benchmark
  public Outcome game() {
    number = (number + 1) % DEALS;
    Outcome outcome = game.play(Deal.of(1, number, TileSet.USUAL));
    if (listener.equals("tally")) {
      tally.endDeal();
    }
    return outcome;
  }

  /** The baseline: counts under names in a map, as one would first write them. */
  private static final class NamedCounts implements GameListener {
    private final Map<String, Long> counts = new HashMap<>();

    private void add(String name, long number) {
      counts.merge(name, number, Long::sum);
    }

    @Override
    public boolean wantsAims() {
      return true;
    }

    @Override
    public void aimed(int seat, AimMoment moment, int line) {
      add("aim " + moment + " " + line, 1);
    }

    @Override
    public void discarded(int seat, int tile) {
      add("discards " + seat, 1);
    }

    @Override
    public void ended(Outcome outcome) {
      add("end " + outcome.how() + " wall " + outcome.wall(), 1);
      for (int seat = 0; seat < 4; seat++) {
        add("points " + seat, outcome.points().get(seat));
      }
      if (outcome.win() != null) {
        add("wins " + outcome.win().seat(), 1);
        add("line " + outcome.win().line(), 1);
      }
    }
  }
}
