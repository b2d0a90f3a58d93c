package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;
import org.tallywall.experiments.stats.Interval;

/**
 * What the decisions looked at come to.
 *
 * @param question what was asked
 * @param planned how many decisions were to be looked at
 * @param judged those that were
 * @param kinds what they come to by kind, in the order of a game
 * @param lostPerGame points that one player loses in a game, over all kinds
 * @param lostPerGameRange its range, where there is one
 * @param dearest decisions in which another choice was ahead, those first that seemed to lose most
 *     when it was found, less the standard error
 */
public record SchoolResult(
    SchoolQuestion question,
    int planned,
    List<Judged> judged,
    List<KindResult> kinds,
    double lostPerGame,
    Optional<Interval> lostPerGameRange,
    List<Judged> dearest) {
  /** The level of the ranges. */
  public static final double CONFIDENCE = 0.95;

  /** How many of the dearest decisions are shown. */
  private static final int SHOWN = 50;

  /**
   * Copies the lists.
   *
   * @param question what was asked
   * @param planned how many decisions were to be looked at
   * @param judged those that were
   * @param kinds what they come to
   * @param lostPerGame points lost in a game
   * @param lostPerGameRange its range
   * @param dearest the dearest
   */
  public SchoolResult {
    judged = List.copyOf(judged);
    kinds = List.copyOf(kinds);
    dearest = List.copyOf(dearest);
  }

  /**
   * Adds up.
   *
   * @param question what was asked
   * @param planned how many decisions were to be looked at
   * @param counts the games
   * @param judged the decisions looked at
   * @return what they come to
   */
  public static SchoolResult of(
      SchoolQuestion question, int planned, Counts counts, List<Judged> judged) {
    int asked = (int) judged.stream().filter(Judged::counts).map(Judged::kind).distinct().count();
    List<KindResult> kinds = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      KindResult.of(kind, counts, judged, asked).ifPresent(kinds::add);
    }
    double sum = kinds.stream().mapToDouble(KindResult::lostPerGame).sum();
    List<Judged> dearest =
        judged.stream()
            .filter(Judged::differs)
            .sorted(
                Comparator.<Judged>comparingDouble(one -> 0 - one.first().atLeast())
                    .thenComparingInt(Judged::number))
            .limit(SHOWN)
            .toList();
    return new SchoolResult(
        question, planned, judged, kinds, sum, range(sum, kinds, judged), dearest);
  }

  /**
   * The range of the sum. Few decisions of a kind may hold none of those that lose much, and then
   * say that nothing is lost, and that this is certain. Toward the upper end, each kind therefore
   * counts one more decision into its spread that nobody looked at, and that loses as much as those
   * of all kinds in which another choice was ahead (root mean square).
   */
  private static Optional<Interval> range(double sum, List<KindResult> kinds, List<Judged> judged) {
    int least = kinds.stream().mapToInt(KindResult::looked).min().orElse(0);
    double below = kinds.stream().mapToDouble(KindResult::variance).sum();
    if (least < 2 || below == 0) {
      return Optional.empty();
    }
    double square =
        judged.stream()
            .filter(Judged::differs)
            .mapToDouble(one -> one.second().mean() * one.second().mean())
            .average()
            .orElse(0);
    double above = below;
    for (KindResult kind : kinds) {
      double share = kind.perGame() / kind.looked();
      above += share * share * square;
    }
    double reach =
        new TDistribution(null, least - 1).inverseCumulativeProbability((1 + CONFIDENCE) / 2);
    return Optional.of(
        new Interval(sum - reach * Math.sqrt(below), sum + reach * Math.sqrt(above)));
  }

  /**
   * Whether all decisions were looked at.
   *
   * @return false where somebody stopped it before
   */
  public boolean complete() {
    return judged.size() == planned;
  }
}
