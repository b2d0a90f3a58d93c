package org.tallywall.strategies.guess;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What each trait of a rack counts for, for one kind of player. All stand in one table, {@code
 * trait-weights.txt}, which says by which command and from which games it was made: coefficients of
 * a conditional logit model (McFadden, in Zarembka, Frontiers in Econometrics, 1974, 105–142), the
 * true rack chosen among proposed ones, which is also noise-contrastive estimation with the
 * proposal as noise (Gutmann and Hyvärinen, AISTATS 2010, 297–304); both from memory.
 */
public final class TraitWeights {
  /** The column for players of whom nothing is known: all kinds together. */
  public static final String ANYBODY = "anybody";

  private static final String FILE = "trait-weights.txt";
  private static final int MOST = 60;

  /**
   * What it counts for that a rack would have won on a discard that was let lie. Of the players
   * that there are none does that; a little is left for those who overlook something.
   */
  private static final double LET_WIN_LIE = 1e-4;

  /** Every column of the table, read once; never changed. */
  private static final Map<String, TraitWeights> COLUMNS = read();

  private final double[] weights;

  private TraitWeights(double[] weights) {
    this.weights = weights;
  }

  /**
   * Given weights.
   *
   * @param weights one for each of {@link RackTraits#names()}
   * @return the weights
   * @throws IllegalArgumentException if there are more or fewer
   */
  public static TraitWeights of(double[] weights) {
    if (weights.length != RackTraits.names().size()) {
      throw new IllegalArgumentException(
          "there are " + RackTraits.names().size() + " traits, not " + weights.length);
    }
    return new TraitWeights(weights.clone());
  }

  /**
   * The weights for a kind of player.
   *
   * @param kind its name in the catalog, such as {@code watchful}
   * @return its own weights, or those of {@link #ANYBODY} where the table has none for it
   */
  public static TraitWeights of(String kind) {
    return COLUMNS.getOrDefault(kind, COLUMNS.get(ANYBODY));
  }

  /**
   * The kinds of players that have weights of their own.
   *
   * @return names, in the order of the table
   */
  public static List<String> kinds() {
    return List.copyOf(COLUMNS.keySet());
  }

  private static Map<String, TraitWeights> read() {
    try (InputStream file = TraitWeights.class.getResourceAsStream(FILE)) {
      return parse(new String(file.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, TraitWeights> parse(String text) {
    List<String[]> rows =
        text.lines()
            .filter(line -> !line.startsWith("#") && !line.isBlank())
            .map(line -> line.split("\t"))
            .toList();
    Map<String, double[]> columns = new LinkedHashMap<>();
    List<String> names = RackTraits.names();
    for (String kind : Arrays.asList(rows.get(0)).subList(1, rows.get(0).length)) {
      columns.put(kind, new double[names.size()]);
    }
    for (String[] row : rows.subList(1, rows.size())) {
      int trait = names.indexOf(row[0]);
      if (trait < 0) {
        throw new IllegalStateException(FILE + " names a trait that there is not: " + row[0]);
      }
      int column = 1;
      for (double[] weights : columns.values()) {
        weights[trait] = Double.parseDouble(row[column++]);
      }
    }
    Map<String, TraitWeights> read = new LinkedHashMap<>();
    columns.forEach((kind, weights) -> read.put(kind, new TraitWeights(weights)));
    return Collections.unmodifiableMap(read);
  }

  /**
   * How well a rack fits what was seen, by its traits.
   *
   * @param traits the traits of the rack
   * @return a weight above 0; only ratios matter
   */
  public double weigh(RackTraits traits) {
    double sum = 0;
    for (int at = 0; at < traits.count(); at++) {
      sum += weights[traits.index(at)] * traits.value(at);
    }
    double fits = StrictMath.exp(Math.max(-MOST, Math.min(MOST, sum)));
    return traits.letWinLie() ? LET_WIN_LIE * fits : fits;
  }
}
