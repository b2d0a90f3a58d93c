package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** A terminal obeys nothing that came from a file or was typed wrongly. */
class PlainWriterTest {
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
  private final PlainWriter writer = new PlainWriter(bytes);
  private final PrintWriter printer = new PrintWriter(writer);

  private String written() {
    printer.flush();
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Test
  void lines_endAlikeOnEveryMachine() {
    printer.print("one\r\ntwo\n");
    printer.print("three\r");
    printer.print("\nfour");
    assertThat(written()).isEqualTo("one\ntwo\nthree\nfour");
  }

  @Test
  void whatATerminalObeys_isShown() {
    printer.print("a\u001b[31mred\u0007 \u009b2J\b \u202egnp\u2066 a\rb\ud800c\u0000");
    assertThat(written())
        .isEqualTo(
            "a\\u{1b}[31mred\\u{7} \\u{9b}2J\\u{8} \\u{202e}gnp\\u{2066} a\\u{d}b\\u{d800}c\\u{0}");
  }

  @Test
  void otherText_staysAsItIs() {
    printer.print("„Über“ 🀄 100 % – naïve\n\n  x");
    assertThat(written()).isEqualTo("„Über“ 🀄 100 % – naïve\n\n  x");
  }

  @Test
  void progressOfOurOwn_writesOverItsLine() {
    writer.raw("\r");
    printer.print("10 %");
    assertThat(written()).isEqualTo("\r10 %");
  }
}
