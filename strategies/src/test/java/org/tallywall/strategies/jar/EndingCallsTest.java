package org.tallywall.strategies.jar;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Calls that end the program are found in the bytes of a class, as javac writes them. */
class EndingCallsTest {
  private static byte[] bytes(Class<?> type) throws IOException {
    String name = type.getName().substring(type.getName().lastIndexOf('.') + 1) + ".class";
    try (InputStream in = type.getResourceAsStream(name)) {
      return in.readAllBytes();
    }
  }

  /** Ends the program. */
  static final class Exits {
    void run() {
      System.exit(3);
    }
  }

  /** Ends it in the middle of a lambda. */
  static final class ExitsLater {
    Runnable run() {
      return () -> Runtime.getRuntime().exit(0);
    }
  }

  /** Ends it without a word. */
  static final class Halts {
    void run() {
      Runtime.getRuntime().halt(0);
    }
  }

  /** Holds numbers of two places in its pool, and methods that are called alike. */
  static final class Harmless {
    static final long LARGE = 12_345_678_901L;
    static final double SMALL = 1.0e-9;

    long exit(double times) {
      return LARGE + (long) (SMALL * times) + Runtime.getRuntime().freeMemory();
    }

    long run() {
      return exit(System.nanoTime());
    }
  }

  @Test
  void call_thatEndsTheProgram_isNamed() throws IOException {
    assertThat(EndingCalls.in(bytes(Exits.class))).contains("System.exit");
    assertThat(EndingCalls.in(bytes(ExitsLater.class))).contains("Runtime.exit");
    assertThat(EndingCalls.in(bytes(Halts.class))).contains("Runtime.halt");
  }

  @Test
  void otherClasses_areLetThrough() throws IOException {
    assertThat(EndingCalls.in(bytes(Harmless.class))).isEmpty();
    assertThat(EndingCalls.in(bytes(EndingCallsTest.class))).isEmpty();
  }

  @Test
  void bytesOfNoClass_areLeftToWhoeverLoadsThem() throws IOException {
    byte[] whole = bytes(Harmless.class);
    for (int length = 0; length < whole.length; length += 7) {
      assertThat(EndingCalls.in(Arrays.copyOf(whole, length))).isEmpty();
    }
    assertThat(EndingCalls.in(new byte[300])).isEmpty();
  }
}
