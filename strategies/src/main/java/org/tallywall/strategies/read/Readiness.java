package org.tallywall.strategies.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * How likely a player is one tile away, by what everybody can see of her ({@link Tells}): a logit
 * model (Cox, Journal of the Royal Statistical Society B 20, 1958, 215-242, from memory). The table
 * {@code readiness.txt} says by which command and from which games it was made.
 */
public final class Readiness {
  private static final String FILE = "readiness.txt";

  /** Read once; never changed. */
  private static final Readiness FITTED = read();

  private final double[] base;
  private final double[] all;

  private Readiness(double[] base, double[] all) {
    this.base = base;
    this.all = all;
  }

  /**
   * What was fitted to simulated games.
   *
   * @return the weights
   */
  public static Readiness fitted() {
    return FITTED;
  }

  /**
   * Given weights.
   *
   * @param base what exposures and wall count for where nothing else is looked at, one number for
   *     each of {@link Tells#names()}
   * @param all what each counts for where all are
   * @return the weights
   */
  public static Readiness of(double[] base, double[] all) {
    return new Readiness(base.clone(), all.clone());
  }

  private static Readiness read() {
    try (InputStream file = Readiness.class.getResourceAsStream(FILE)) {
      return parse(new String(file.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Readiness parse(String text) {
    List<String> names = Tells.names();
    double[] base = new double[names.size()];
    double[] all = new double[names.size()];
    text.lines()
        .filter(line -> !line.startsWith("#") && !line.isBlank())
        .map(line -> line.split("\t"))
        .forEach(
            row -> {
              int at = names.indexOf(row[0]);
              if (at < 0) {
                throw new IllegalStateException(FILE + " names what nobody looks at: " + row[0]);
              }
              base[at] = Double.parseDouble(row[1]);
              all[at] = Double.parseDouble(row[2]);
            });
    return new Readiness(base, all);
  }

  /**
   * The chance that she is one away, by her exposures and the wall alone.
   *
   * @param tells what can be seen of her
   * @return 0 to 1
   */
  public double byExposures(Tells tells) {
    return chance(base, tells);
  }

  /**
   * The chance that she is one away, by all that can be seen.
   *
   * @param tells what can be seen of her
   * @return 0 to 1
   */
  public double byAll(Tells tells) {
    return chance(all, tells);
  }

  private static double chance(double[] weights, Tells tells) {
    double sum = 0;
    for (int at = 0; at < weights.length; at++) {
      sum += weights[at] * tells.value(at);
    }
    return chance(sum);
  }

  /**
   * The same from numbers that were noted, by exposures and wall alone.
   *
   * @param places where among {@link Tells#names()}
   * @param values the numbers there; all others are 0
   * @return 0 to 1
   */
  public double byExposures(int[] places, float[] values) {
    return chance(base, places, values);
  }

  /**
   * The same from numbers that were noted, by all that can be seen.
   *
   * @param places where among {@link Tells#names()}
   * @param values the numbers there; all others are 0
   * @return 0 to 1
   */
  public double byAll(int[] places, float[] values) {
    return chance(all, places, values);
  }

  private static double chance(double[] weights, int[] places, float[] values) {
    double sum = 0;
    for (int at = 0; at < places.length; at++) {
      sum += weights[places[at]] * values[at];
    }
    return chance(sum);
  }

  private static double chance(double sum) {
    return 1 / (1 + StrictMath.exp(-sum));
  }
}
