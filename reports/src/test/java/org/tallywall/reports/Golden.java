package org.tallywall.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Files under {@code golden/} that hold what a writer must give, byte for byte. */
public final class Golden {
  private Golden() {}

  public static void assertSame(String text, String file) throws IOException {
    try (InputStream in = Golden.class.getResourceAsStream("/golden/" + file)) {
      assertThat(in).as("golden/%s", file).isNotNull();
      byte[] expected = in.readAllBytes();
      assertThat(text).isEqualTo(new String(expected, StandardCharsets.UTF_8));
      assertThat(text.getBytes(StandardCharsets.UTF_8)).isEqualTo(expected);
    }
  }
}
