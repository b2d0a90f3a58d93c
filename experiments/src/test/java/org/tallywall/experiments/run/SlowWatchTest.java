package org.tallywall.experiments.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A player is blamed for the time that it took, and for no other. */
class SlowWatchTest {
  private final Pulse pulse = new Pulse();
  private final SlowWatch watch = new SlowWatch(pulse, 1_000, 500);

  @Test
  void answerThatDoesNotCome_isNoticedAfterTheLimit() {
    GamePlace place = new GamePlace(17, 17, "careful", 2);
    pulse.begins(place);
    pulse.asks(3);

    assertThat(watch.look(250)).isNull();
    assertThat(watch.look(500)).isNull();
    assertThat(watch.look(500)).isNull();
    SlowPlayerException slow = watch.look(250);
    assertThat(slow).isNotNull();
    assertThat(slow.seat()).isEqualTo(3);
    assertThat(slow.game()).isEqualTo(place);
  }

  @Test
  void manyQuickAnswers_areNoSlowOne() {
    for (int look = 0; look < 100; look++) {
      pulse.asks(1);
      pulse.answered();
      pulse.asks(1);
      assertThat(watch.look(250)).isNull();
    }
  }

  @Test
  void timeBetweenQuestions_isNobodysFault() {
    pulse.asks(1);
    pulse.answered();
    for (int look = 0; look < 100; look++) {
      assertThat(watch.look(250)).isNull();
    }
  }

  /** A laptop that slept for an hour wakes up with one long look. */
  @Test
  void machineThatSlept_blamesNobody() {
    pulse.asks(0);
    assertThat(watch.look(250)).isNull();
    assertThat(watch.look(3_600_000)).isNull();
    pulse.answered();
    assertThat(watch.look(250)).isNull();
  }
}
