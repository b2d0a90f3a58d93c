package org.tallywall.experiments.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.store.BlockCodec;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.tally.Carrier;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyListener;
import org.tallywall.experiments.tally.TallyPlan;
import org.tallywall.strategies.player.NearestPlayer;
import tools.jackson.databind.json.JsonMapper;

/** What it costs to store a block of 500 deals, apart from the disk. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class CheckpointBenchmark {
  private static final int DEALS = 500;
  private static final int EVERY_SEAT = 15;
  private static final TallyPlan PLAN = new TallyPlan(1, 0, 0, 1, 0);
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final byte[] run = new byte[32];
  private final Block block = new Block(0, 0, DEALS);
  private TableSetup setup;
  private BlockCodec codec;
  private BlockResult result;
  private byte[] file;

  /** For the harness. */
  public CheckpointBenchmark() {}

  /** Plays the block. */
  @Setup
  public void play() {
    setup = new TableSetup(BenchmarkCards.demo(), TableRules.STANDARD);
    codec = new BlockCodec(() -> new StudyTally(PLAN, setup));
    StudyTally tally = new StudyTally(PLAN, setup);
    TallyListener listener = new TallyListener();
    listener.count(tally.arm(0), EVERY_SEAT);
    List<Player> players = Stream.<Player>generate(NearestPlayer::new).limit(4).toList();
    Game game = new Game(setup, players, listener);
    for (long deal = 0; deal < DEALS; deal++) {
      game.play(Deal.of(1, deal, TileSet.USUAL));
      tally.arm(0).endDeal();
      tally.endDeal(1);
    }
    result = new BlockResult(block, tally, List.of(), List.of());
    file = write();
  }

  /**
   * A block made ready for the disk.
   *
   * @return the bytes of its file
   */
  @Benchmark
  public byte[] write() {
    return Checkpoint.file(run, block, codec.bytes(result));
  }

  /**
   * A block read back and checked.
   *
   * @return what came out of it
   */
  @Benchmark
  public BlockResult read() {
    return codec.result(block, Checkpoint.read(run, block, file).content());
  }

  /**
   * The baseline of writing: the same numbers as a list of JSON.
   *
   * @return its bytes
   */
  @Benchmark
  public byte[] plainJson() {
    List<Long> numbers = new ArrayList<>();
    result
        .tally()
        .carry(
            new Carrier() {
              @Override
              public long carry(long number) {
                numbers.add(number);
                return number;
              }
            });
    return JSON.writeValueAsBytes(numbers);
  }
}
