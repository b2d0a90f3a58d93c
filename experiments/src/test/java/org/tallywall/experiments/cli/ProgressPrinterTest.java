package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.run.RunState;

/** What is said while a run goes on. */
class ProgressPrinterTest {
  private static final long SECOND = 1_000_000_000L;

  @Test
  void text_halfWay_namesSpeedAndTimeLeft() {
    assertThat(ProgressPrinter.text(10_000, 10_000, 20_000, 5 * SECOND, false))
        .isEqualTo("10,000 of 20,000 deals, 50 %, 2,000 deals a second, 5 s left");
    assertThat(ProgressPrinter.text(0, 0, 20_000, SECOND, false))
        .isEqualTo("0 of 20,000 deals, 0 %");
  }

  @Test
  void text_afterAResume_takesTheSpeedFromWhatIsPlayedNow() {
    assertThat(ProgressPrinter.text(15_000, 1_000, 20_000, 5 * SECOND, false))
        .isEqualTo("15,000 of 20,000 deals, 75 %, 200 deals a second, 25 s left");
    assertThat(ProgressPrinter.text(14_000, 0, 20_000, SECOND, false))
        .isEqualTo("14,000 of 20,000 deals, 70 %");
  }

  @Test
  void text_ofARunThatMayStop_saysHowLongAtMost_inWholeMinutes() {
    assertThat(ProgressPrinter.text(500, 500, 20_000, 5 * SECOND, true))
        .endsWith(" at most 4 min left");
    assertThat(ProgressPrinter.text(14_000, 500, 20_000, 5 * SECOND, true))
        .endsWith(" at most 1 min left");
    assertThat(ProgressPrinter.text(14_100, 500, 20_000, 5 * SECOND, true))
        .endsWith(" at most 59 s left");
    assertThat(ProgressPrinter.text(500, 500, 400_000, 5 * SECOND, true))
        .endsWith(" at most 1 h 7 min left");
  }

  @Test
  void speed_agreesInNumber_andIsTakenByTheMinuteWhereItIsLow() {
    assertThat(ProgressPrinter.speed(1.2, "deal", "deals")).isEqualTo("1 deal a second");
    assertThat(ProgressPrinter.speed(1_999.6, "deal", "deals")).isEqualTo("2,000 deals a second");
    assertThat(ProgressPrinter.speed(0.4, "deal", "deals")).isEqualTo("24 deals a minute");
    assertThat(ProgressPrinter.speed(0.02, "deal", "deals")).isEqualTo("1 deal a minute");
  }

  @Test
  void duration_longRuns_areInHoursAndMinutes() {
    assertThat(ProgressPrinter.duration(59)).isEqualTo("59 s");
    assertThat(ProgressPrinter.duration(61)).isEqualTo("1 min 1 s");
    assertThat(ProgressPrinter.duration(7_322)).isEqualTo("2 h 2 min");
  }

  @Test
  void bar_grows() {
    assertThat(ProgressPrinter.bar(0, 10)).isEqualTo("[........................]");
    assertThat(ProgressPrinter.bar(5, 10)).isEqualTo("[############............]");
    assertThat(ProgressPrinter.bar(10, 10)).isEqualTo("[########################]");
  }

  @Test
  void bar_onATerminal_isWrittenOverAndClearedAtTheEnd() throws InterruptedException {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console = new Console(OutputStream.nullOutputStream(), err, 80, true);
    ProgressPrinter printer = new ProgressPrinter(console, new RunState(10, 500, 0), false);
    while (err.size() == 0) {
      Thread.sleep(20);
    }
    printer.end();

    assertThat(err.toString(StandardCharsets.UTF_8))
        .startsWith("\r[........................]  0 of 10 deals, 0 %")
        .endsWith(" \r")
        .doesNotContain("\n");
  }
}
