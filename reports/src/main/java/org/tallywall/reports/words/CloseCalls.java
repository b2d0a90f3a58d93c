package org.tallywall.reports.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/** Several ways of playing that are too close to call, told in one go. */
public final class CloseCalls {
  private CloseCalls() {}

  /**
   * How far each may lie from what they are compared with, and what the run would have caught.
   *
   * @param results what a results folder holds
   * @param close comparisons of one measure with one way of playing, each with a range and not
   *     clear; at least one
   * @return some sentences
   */
  public static String told(Results results, List<Compared> close) {
    Compared first = close.get(0);
    String measure = first.measure();
    List<String> ranges = new ArrayList<>();
    for (Compared one : close) {
      String alone =
          one.isClearAlone(results.confidence())
              ? " (this leaves out 0, but not after allowing for %s comparisons)"
                  .formatted(Compared.together(results))
              : "";
      ranges.add("for " + Wording.quoted(one.arm()) + " " + range(one) + alone);
    }
    return "On the same deals, the difference from %s in %s could be anything in these ranges: %s.%s"
        .formatted(
            Wording.quoted(first.baseline()),
            MeasureWords.heading(measure),
            String.join("; ", ranges),
            caught(close));
  }

  private static String range(Compared one) {
    Ranged hundred = one.inHundred().orElseThrow();
    Rounding.Rounded shown = Rounding.interval(hundred.value(), hundred.low(), hundred.high(), 1);
    boolean oneSided = shown.low().signum() * shown.high().signum() > 0;
    return oneSided
        ? "%s to %s".formatted(size(nearer(shown)), sided(further(shown)))
        : "%s to %s".formatted(sided(shown.low()), sided(shown.high()));
  }

  private static BigDecimal nearer(Rounding.Rounded shown) {
    return shown.low().abs().min(shown.high().abs());
  }

  private static BigDecimal further(Rounding.Rounded shown) {
    return shown.low().signum() < 0 ? shown.low() : shown.high();
  }

  private static String sided(BigDecimal number) {
    String side = number.signum() == 0 ? "" : number.signum() > 0 ? " more" : " fewer";
    return size(number) + side;
  }

  private static String size(BigDecimal number) {
    return CellText.grouped(number.abs().toPlainString());
  }

  /** Only where the file has it of all of them, from as many deals. */
  private static String caught(List<Compared> close) {
    List<OptionalDouble> sizes =
        close.stream().map(one -> one.row().number(DifferenceColumns.DETECTABLE)).toList();
    List<Long> deals =
        close.stream().map(one -> one.row().count(DifferenceColumns.DEALS)).distinct().toList();
    if (sizes.stream().anyMatch(OptionalDouble::isEmpty) || deals.size() > 1) {
      return "";
    }
    double least = sizes.stream().mapToDouble(OptionalDouble::getAsDouble).min().orElseThrow();
    double most = sizes.stream().mapToDouble(OptionalDouble::getAsDouble).max().orElseThrow();
    return MeasureWords.of(close.get(0).measure())
        .map(words -> " " + Wording.tooSmall(words, deals.get(0), least, most))
        .orElse("");
  }
}
