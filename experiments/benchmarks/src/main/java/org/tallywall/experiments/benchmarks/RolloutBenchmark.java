package org.tallywall.experiments.benchmarks;

import java.math.BigDecimal;
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
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One discard of {@code rollout}. Two choices are compared wherever the rack stands, so that every
 * playout is spent: with more, those that look worse are dropped and time is saved.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class RolloutBenchmark {
  private static final Map<String, String> SHEETS =
      Map.of(
          "early",
          """
          seat 0
          moment turn
          wall 95
          rack 44455566778b 1d ES
          discards 2b E W 9c
          """,
          "middle",
          """
          seat 0
          moment turn
          wall 72
          rack 44455566778b 1d ES
          exposed 2 RRRR 1111b
          discards 2333b 235678c 22345567d EEWWSS G0 F
          """,
          "late",
          """
          seat 0
          moment turn drew R
          wall 40
          rack 4445556667778b R
          exposed 2 GGG 000 9999c
          discards 12347899b 22233556667788c 1122233344555667788999d NNNEEEWWSSS G FFF
          """);

  /** Who plays the games out. */
  @Param({"nearest", "reckoner"})
  public String inner;

  /** Playouts for the decision. */
  @Param({"200"})
  public int playouts;

  /** How far the game has gone: 95, 72 or 40 tiles in the wall. */
  @Param({"early", "middle", "late"})
  public String position;

  private Player player;
  private SeatView view;
  private long decision;

  /** For the harness. */
  public RolloutBenchmark() {}

  /** Reads the position and makes the player. */
  @Setup
  public void sit() {
    TableSetup setup = new TableSetup(BenchmarkCards.of(0), TableRules.STANDARD);
    view = PositionSheet.of(position, SHEETS.get(position), setup).view();
    player =
        new PlayerSpec(
                Catalog.standard().type("rollout").orElseThrow(),
                Map.of(
                    "rollout.inner", inner,
                    "rollout.playouts", BigDecimal.valueOf(playouts),
                    "rollout.candidates", new BigDecimal("2"),
                    "rollout.worth-at-least", new BigDecimal("0"),
                    "rollout.when-away-at-most", new BigDecimal("14"),
                    "rollout.below-wall", new BigDecimal("99")))
            .make();
  }

  /**
   * One decision, with other numbers each time.
   *
   * @return what is thrown
   */
  @Benchmark
  public TurnChoice discard() {
    return player.turn(
        view, new RandomStream(new StreamKey(1, 2, Purpose.DECISION, view.seat(), 0, decision++)));
  }
}
