package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** What the first, the second and the third Ctrl-C do. */
class InterruptsTest {
  private final AtomicInteger left = new AtomicInteger();
  private final Interrupts interrupts = new Interrupts(left::incrementAndGet);
  private final List<Integer> heard = new ArrayList<>();

  @Test
  void withoutWork_theProgramIsLeftAtOnce() {
    interrupts.stop();
    assertThat(left).hasValue(1);
  }

  @Test
  void work_isToldTwiceAndThenLeft() {
    interrupts.begins(heard::add);
    interrupts.stop();
    interrupts.stop();
    assertThat(heard).containsExactly(1, 2);
    assertThat(left).hasValue(0);
    interrupts.stop();
    assertThat(left).hasValue(1);
  }

  @Test
  void nextWork_countsAnew() {
    interrupts.begins(heard::add);
    interrupts.stop();
    interrupts.over();
    interrupts.begins(heard::add);
    interrupts.stop();
    assertThat(heard).containsExactly(1, 1);
  }
}
