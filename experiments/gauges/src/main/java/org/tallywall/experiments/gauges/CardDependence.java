package org.tallywall.experiments.gauges;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.tallywall.experiments.stats.Sameness;
import org.tallywall.reports.results.Results;

/**
 * Whether the strengths of players depend on the card: those of all players that won often enough
 * on all cards, tested together; then each by itself, and every two for an order turned round.
 */
final class CardDependence {
  private static final double LEVEL = 0.05;

  private final List<Results> cards;
  private final List<String> names;
  private final List<Strengths> strengths;

  /**
   * A test.
   *
   * @param cards the results of one ladder on each card
   */
  CardDependence(List<Results> cards) {
    this.cards = List.copyOf(cards);
    this.names =
        cards.get(0).rows("ratings").stream()
            .map(row -> row.text("arm"))
            .filter(name -> cards.stream().allMatch(card -> compared(card).contains(name)))
            .toList();
    this.strengths = cards.stream().map(card -> new Strengths(card, names)).toList();
  }

  private static Set<String> compared(Results card) {
    Set<String> compared = new TreeSet<>();
    card.rows("rating-differences")
        .forEach(row -> compared.addAll(List.of(row.text("arm"), row.text("other"))));
    return compared;
  }

  /** The test of all strengths together. */
  Sameness together() {
    return Sameness.of(
        strengths.stream().map(Strengths::others).toList(),
        strengths.stream().map(Strengths::covariancesOfOthers).toList());
  }

  /** What the tests say, a paragraph each. */
  List<String> paragraphs() {
    List<String> paragraphs = new ArrayList<>();
    if (names.size() < 2 || cards.size() < 2) {
      return paragraphs;
    }
    Sameness test = together();
    boolean differ = test.statistic() > test.critical(LEVEL);
    paragraphs.add(
        String.format(
            Locale.ROOT,
            "Whether the strengths depend on the card: the %d players that won often enough on every"
                + " card are tested together (chi-squared %.1f with %d degrees of freedom; by chance"
                + " it lies above %.1f in 5 of 100 such ladders, and as high as here in %s). %s",
            names.size(),
            test.statistic(),
            test.degrees(),
            test.critical(LEVEL),
            inHundred(test.p()),
            differ
                ? "So they do: the gaps between players are not the same on all cards."
                : "So nothing here says that they do."));
    if (differ) {
      paragraphs.add(oneByOne());
    }
    paragraphs.add(turned());
    return paragraphs;
  }

  private static String inHundred(double p) {
    return 100 * p < 0.1
        ? "fewer than 0.1 of 100"
        : String.format(Locale.ROOT, "%.1f of 100", 100 * p);
  }

  /** Each player beside the mean of the others, Bonferroni's level. */
  private String oneByOne() {
    List<String> found = new ArrayList<>();
    for (int player = 0; player < names.size(); player++) {
      double[] weights = new double[names.size()];
      for (int at = 0; at < weights.length; at++) {
        weights[at] = at == player ? 1 : -1.0 / (names.size() - 1);
      }
      Sameness one =
          Sameness.of(
              strengths.stream().map(card -> new double[] {card.sum(weights)}).toList(),
              strengths.stream().map(card -> new double[][] {{card.variance(weights)}}).toList());
      if (one.statistic() > one.critical(LEVEL / names.size())) {
        found.add(names.get(player) + " (" + each(weights) + ")");
      }
    }
    String begin =
        "One by one, beside the mean of the others, with all %s counted together (Bonferroni), ";
    return begin.formatted(names.size())
        + (found.isEmpty()
            ? "no single player stands out."
            : "these differ from card to card, in the order of the cards: "
                + String.join("; ", found)
                + ".");
  }

  private String each(double[] weights) {
    return String.join(
        ", ",
        strengths.stream()
            .map(card -> String.format(Locale.ROOT, "%.2f", card.sum(weights)))
            .toList());
  }

  /** Pairs that stand in one order on one card and in the other on another. */
  private String turned() {
    int pairs = names.size() * (names.size() - 1) / 2;
    double z =
        new NormalDistribution(null, 0, 1)
            .inverseCumulativeProbability(1 - LEVEL / pairs / cards.size() / 2);
    List<String> found = new ArrayList<>();
    for (int one = 0; one < names.size(); one++) {
      for (int other = one + 1; other < names.size(); other++) {
        double[] weights = new double[names.size()];
        weights[one] = 1;
        weights[other] = -1;
        double[] clear =
            strengths.stream()
                .mapToDouble(card -> card.sum(weights) / Math.sqrt(card.variance(weights)))
                .toArray();
        boolean above = false;
        boolean below = false;
        for (double error : clear) {
          above |= error > z;
          below |= error < -z;
        }
        if (above && below) {
          found.add(names.get(one) + " and " + names.get(other));
        }
      }
    }
    return found.isEmpty()
        ? "No two of them stand clearly in one order on one card and clearly in the other on"
            + " another, all pairs and cards counted together (Bonferroni)."
        : "These stand clearly in one order on one card and clearly in the other on another, all"
            + " pairs and cards counted together (Bonferroni): "
            + String.join("; ", found)
            + ".";
  }
}
