package org.tallywall.experiments.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Blocks may end in any order; their results are handed over in theirs. */
@Timeout(value = 20, unit = TimeUnit.MINUTES)
class LocalRunTest {

  /** Plays blocks in next to no time, the early ones slower than the late ones. */
  private static BlockResult uneven(Block block, RunState state) {
    pause(block.number() % 3 == 0 ? 8 : 1);
    return state.abandoned() ? null : new BlockResult(block, null, List.of(), List.of());
  }

  private static LocalRun run(BlockPlayer player, RunState state, int threads) {
    return new LocalRun(pulse -> player, state, RunLimits.of(threads), BlockKeeper.NONE);
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void results_anyNumberOfThreads_comeInTheOrderOfBlocks(int threads) {
    RunState state = new RunState(20_250, 500, 0);
    List<Long> order = new ArrayList<>();
    AtomicLong deals = new AtomicLong();

    Ending ending =
        run(LocalRunTest::uneven, state, threads)
            .play(
                result -> {
                  order.add(result.block().number());
                  deals.addAndGet(result.block().deals());
                  return true;
                });

    assertThat(ending).isEqualTo(Ending.ALL);
    assertThat(order).hasSize(41).isSorted();
    assertThat(deals).hasValue(20_250);
  }

  @Test
  void results_slowReader_fewBlocksWaitAtATime() {
    AtomicInteger begun = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    int[] taken = {0};

    run(
            (block, state) -> {
              begun.incrementAndGet();
              return new BlockResult(block, null, List.of(), List.of());
            },
            new RunState(50_000, 500, 0),
            3)
        .play(
            result -> {
              pause(2);
              most.accumulateAndGet(begun.get() - taken[0]++, Math::max);
              return true;
            });

    assertThat(taken[0]).isEqualTo(100);
    assertThat(most.get()).isLessThanOrEqualTo(2 * 3 + 2);
  }

  @Test
  void stop_inTheMiddle_endsTheRunWithoutTheRest() {
    RunState state = new RunState(500_000, 500, 0);
    AtomicInteger results = new AtomicInteger();

    Ending ending =
        run(LocalRunTest::uneven, state, 2)
            .play(
                result -> {
                  if (results.incrementAndGet() == 5) {
                    state.stop();
                  }
                  return true;
                });

    assertThat(ending).isEqualTo(Ending.STOPPED);
    assertThat(results.get()).isBetween(5, 11);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7})
  void faults_inSeveralBlocks_theFirstInTheirOrderCounts(int threads) {
    List<Long> handedOver = new ArrayList<>();
    LocalRun run =
        run(
            (block, state) -> {
              pause(block.number() == 4 ? 30 : 1);
              if (block.number() >= 4) {
                throw new IllegalStateException("block " + block.number());
              }
              return new BlockResult(block, null, List.of(), List.of());
            },
            new RunState(10_000, 500, 0),
            threads);

    assertThatThrownBy(() -> run.play(result -> handedOver.add(result.block().number())))
        .hasMessage("block 4");
    assertThat(handedOver).containsExactly(0L, 1L, 2L, 3L);
  }

  @Test
  void fault_beforeTheFirstBlock_isNotWaitedFor() {
    LocalRun run =
        new LocalRun(
            pulse -> {
              throw new IllegalStateException("no table");
            },
            new RunState(1_000, 500, 0),
            RunLimits.of(2),
            BlockKeeper.NONE);

    assertThatThrownBy(() -> run.play(result -> true)).hasMessage("no table");
  }

  @Test
  void readerThatFails_stopsTheRun() {
    RunState state = new RunState(500_000, 500, 0);
    LocalRun run = run(LocalRunTest::uneven, state, 2);

    assertThatThrownBy(
            () ->
                run.play(
                    result -> {
                      throw new IllegalStateException("disk full");
                    }))
        .hasMessage("disk full");
    assertThat(state.stopped()).isTrue();
  }

  @Test
  void blocks_ofAStudy_coverItsDealsOnce() {
    assertThat(Block.count(1, 500)).isEqualTo(1);
    assertThat(Block.count(500, 500)).isEqualTo(1);
    assertThat(Block.count(501, 500)).isEqualTo(2);
    assertThat(Block.of(0, 501, 500)).isEqualTo(new Block(0, 0, 500));
    assertThat(Block.of(1, 501, 500)).isEqualTo(new Block(1, 500, 1));
  }
}
