package org.tallywall.strategies.hand;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Reads a table of weights that was fitted: a name and a number a line, remarks after {@code #}.
 */
public final class NamedWeights {
  private NamedWeights() {}

  /**
   * Reads a table.
   *
   * @param near a class beside which the file lies
   * @param file its name
   * @param names what is weighed, in order
   * @return a number for each name; 0 for a name that the table does not have
   * @throws IllegalStateException if the table has a name that is none of them
   */
  public static double[] read(Class<?> near, String file, List<String> names) {
    double[] weights = new double[names.size()];
    try (InputStream table = near.getResourceAsStream(file)) {
      new String(table.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.isBlank())
          .map(line -> line.split("\t"))
          .forEach(row -> weights[place(file, names, row[0])] = Double.parseDouble(row[1]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return weights;
  }

  private static int place(String file, List<String> names, String name) {
    int at = names.indexOf(name);
    if (at < 0) {
      throw new IllegalStateException(file + " names what nobody looks at: " + name);
    }
    return at;
  }
}
