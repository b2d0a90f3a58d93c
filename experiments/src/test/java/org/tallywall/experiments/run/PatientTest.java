package org.tallywall.experiments.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** Nobody waits for a player without end, and whatever it throws comes out as it is. */
class PatientTest {
  private final Pulse pulse = new Pulse();
  private final AtomicLong clock = new AtomicLong();

  /** A clock that goes on by a second at each look. */
  private RunLimits limits(long millis) {
    return new RunLimits(1, millis, () -> clock.addAndGet(1_000_000_000L));
  }

  @Test
  void workThatAnswers_givesItsAnswer() {
    assertThat(Patient.<String>wait(pulse, limits(4_000), () -> "here")).isEqualTo("here");
  }

  @Test
  void playerThatNeverAnswers_isNamedByItsSeat() {
    CountDownLatch never = new CountDownLatch(1);
    pulse.begins(new GamePlace(7, 0, "", GamePlace.ALL));
    assertThatThrownBy(
            () ->
                Patient.<String>wait(
                    pulse,
                    limits(4),
                    () -> {
                      pulse.asks(2);
                      await(never);
                      return "late";
                    }))
        .isInstanceOfSatisfying(
            SlowPlayerException.class,
            slow -> {
              assertThat(slow.seat()).isEqualTo(2);
              assertThat(slow.game().deal()).isEqualTo(7);
            });
    never.countDown();
  }

  /** What takes long between questions is no player's. */
  @Test
  void workWithoutAnOpenQuestion_isWaitedFor() {
    CountDownLatch looks = new CountDownLatch(50);
    RunLimits limits =
        new RunLimits(
            1,
            4,
            () -> {
              looks.countDown();
              return clock.addAndGet(1_000_000_000L);
            });
    String answer =
        Patient.wait(
            pulse,
            limits,
            () -> {
              await(looks);
              return "at last";
            });
    assertThat(answer).isEqualTo("at last");
  }

  @Test
  void whateverIsThrown_comesOutAsItIs() {
    assertThatThrownBy(
            () ->
                Patient.<String>wait(
                    pulse,
                    limits(4_000),
                    () -> {
                      throw PatientTest.<RuntimeException>sneaky(new IOException("boo"));
                    }))
        .isInstanceOf(IOException.class)
        .hasMessage("boo");
  }

  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T sneaky(Throwable thrown) throws T {
    throw (T) thrown;
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
