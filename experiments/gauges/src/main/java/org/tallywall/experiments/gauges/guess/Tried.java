package org.tallywall.experiments.gauges.guess;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * Two ways of saying how likely something is, beside what was so: the mean of the logarithm of what
 * was said of it, and how often it was said to be likelier where it was so than where it was not
 * (Hanley and McNeil, Radiology 143, 1982, 29-36, from memory).
 */
final class Tried {
  private record One(double before, double after, boolean so) {}

  private final List<One> all = new ArrayList<>();

  void note(double before, double after, boolean so) {
    all.add(new One(before, after, so));
  }

  private double log(ToDoubleFunction<One> said) {
    return all.stream()
        .mapToDouble(
            one -> -StrictMath.log(one.so ? said.applyAsDouble(one) : 1 - said.applyAsDouble(one)))
        .average()
        .orElse(0);
  }

  private double ranked(ToDoubleFunction<One> said) {
    List<One> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparingDouble(said));
    double ranks = 0;
    long so = 0;
    int at = 0;
    while (at < sorted.size()) {
      int to = at;
      while (to < sorted.size()
          && said.applyAsDouble(sorted.get(to)) == said.applyAsDouble(sorted.get(at))) {
        to++;
      }
      for (int one = at; one < to; one++) {
        if (sorted.get(one).so) {
          ranks += (at + 1 + to) / 2.0;
          so++;
        }
      }
      at = to;
    }
    long not = sorted.size() - so;
    return (ranks - so * (so + 1) / 2.0) / ((double) so * not);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%d seen, %d so, said %.1f and %.1f, log %.4f and %.4f, ranked right %.3f and %.3f",
        all.size(),
        all.stream().filter(One::so).count(),
        all.stream().mapToDouble(One::before).sum(),
        all.stream().mapToDouble(One::after).sum(),
        log(One::before),
        log(One::after),
        ranked(One::before),
        ranked(One::after));
  }
}
