package org.tallywall.reports.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The texts that lie beside classes: styles, scripts, parts of files to fill in. */
public final class Resource {
  private Resource() {}

  /**
   * A text that lies beside a class.
   *
   * @param beside the class
   * @param name the file's name
   * @return all of it, read as UTF-8
   * @throws AssertionError if there is no such file
   */
  public static String text(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("the file " + name + " lies beside this class");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
