package org.tallywall.reports.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.tallywall.reports.figure.PlotValue;
import org.tallywall.reports.figure.Sign;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;

/**
 * What is said about a comparison, in words for people who play. A range in numbers costs a reader
 * little trust, hedging in words costs more (van der Bles and others, PNAS 117, 2020, 7672–7683);
 * so a number never stands without its range, and "no difference" is never said.
 */
public final class Wording {
  /** What every page ends with. */
  public static final String CAUTION =
      "These numbers cover programmed players, this card, and these rules, in points. They say"
          + " nothing about people or stakes, and another card may give another answer.";

  /** What keeps a reader from choosing a line by its row. */
  public static final String RACKS =
      "Good racks lead to good lines: the rows compare different racks, not two lines on one rack.";

  private static final double FEW_IN_HUNDRED = 1;
  private static final double GAMES_A_YEAR = 1_200;
  private static final double LEAST_P = 0.0001;

  private Wording() {}

  /**
   * The sentence that answers.
   *
   * @param measure what was measured
   * @param arm the way of playing
   * @param baseline what it is compared with
   * @param hundred the difference in 100 games
   * @param sign whether plus or minus is clear
   * @return one sentence
   */
  public static String sentence(
      MeasureWords measure, String arm, String baseline, Ranged hundred, int sign) {
    return sign == 0
        ? unclear(measure, arm, baseline, hundred)
        : clear(measure, arm, baseline, hundred);
  }

  /**
   * Two ways that did alike in every deal.
   *
   * @param arm the way of playing
   * @param baseline what it is compared with
   * @param heading what was measured
   * @param deals deals played
   * @return a sentence
   */
  public static String same(String arm, String baseline, String heading, long deals) {
    return "%s and %s came out exactly the same in all %s deals (%s)."
        .formatted(quoted(arm), quoted(baseline), CellText.grouped(Long.toString(deals)), heading);
  }

  /**
   * How many deals may differ where none did, by the exact limit of a share.
   *
   * @param most the upper limit of the share of deals that differ
   * @param confidence its level
   * @return a sentence
   */
  public static String rarer(double most, double confidence) {
    return "They may still differ in up to %s of 100 deals, a limit that holds in at least %s of 100 such runs."
        .formatted(upTo(100 * most), level(confidence));
  }

  /**
   * Two ways of which too little was played, in a run that could stop early, for a range.
   *
   * @param arm the way of playing
   * @param baseline what it is compared with
   * @param heading what was measured
   * @param deals deals played
   * @return a sentence
   */
  public static String tooSoon(String arm, String baseline, String heading, long deals) {
    return "%s deals are too few to say how far apart %s and %s are (%s)."
        .formatted(CellText.grouped(Long.toString(deals)), quoted(arm), quoted(baseline), heading);
  }

  /**
   * Two ways of which too little is known for a range.
   *
   * @param arm the way of playing
   * @param baseline what it is compared with
   * @param heading what was measured
   * @param differing deals in which they differ
   * @param deals deals played
   * @return a sentence
   */
  public static String unknown(
      String arm, String baseline, String heading, long differing, long deals) {
    return "Too little to say how far apart %s and %s are (%s): they came out differently in only %s of %s deals."
        .formatted(
            quoted(arm),
            quoted(baseline),
            heading,
            CellText.grouped(Long.toString(differing)),
            CellText.grouped(Long.toString(deals)));
  }

  private static String clear(MeasureWords measure, String arm, String baseline, Ranged hundred) {
    boolean more = hundred.value() > 0;
    PlotValue size = (more ? hundred : hundred.negated()).estimate();
    String word = more ? "more" : "fewer";
    return "On the same deals, %s %s about %s %s %s than %s (%s %s)."
        .formatted(
            quoted(arm),
            measure.past(),
            size.valueText(Sign.MINUS_ONLY),
            word,
            measure.unit(),
            quoted(baseline),
            size.rangeText(Sign.MINUS_ONLY),
            word);
  }

  private static String unclear(MeasureWords measure, String arm, String baseline, Ranged hundred) {
    if (hundred.estimate().clearSign() != 0) {
      return "On its own the range stays on one side of 0 (%s), but among all the comparisons of this study that is not enough to tell %s and %s apart."
          .formatted(
              hundred.estimate().rangeText(Sign.PLUS_AND_MINUS) + " " + measure.unit(),
              quoted(arm),
              quoted(baseline));
    }
    Rounding.Rounded shown = Rounding.interval(hundred.value(), hundred.low(), hundred.high(), 1);
    return "%s and %s are too close to call: on the same deals, the difference could be anything from %s to %s %s."
        .formatted(
            quoted(arm),
            quoted(baseline),
            side(measure, shown.low(), arm, baseline),
            side(measure, shown.high(), arm, baseline),
            measure.unit());
  }

  /** One end of the range: who did how much more. */
  private static String side(MeasureWords measure, BigDecimal limit, String arm, String baseline) {
    String who = limit.signum() < 0 ? baseline : arm;
    String size = CellText.grouped(limit.abs().toPlainString());
    return quoted(who) + " " + measure.gerund() + " " + size + " more";
  }

  /**
   * How long a person would need to notice a small difference of wins.
   *
   * @param difference the difference of the two on the same deals, a share
   * @param games games each way, on deals of their own, that it takes to notice it
   * @return a sentence; empty for a difference of more than 1 in 100, which a table may feel
   */
  public static String patience(double difference, double games) {
    if (100 * Math.abs(difference) > FEW_IN_HUNDRED) {
      return "";
    }
    double years = games / GAMES_A_YEAR;
    String time = rounded(years, 2);
    return "Nobody would notice this at the table: that takes about %s games each way, or %s at 100 games a month."
        .formatted(rounded(games, 3), time + (time.equals("1") ? " year" : " years"));
  }

  /**
   * What would have been too small to see.
   *
   * @param measure what was measured
   * @param deals deals played
   * @param detectable the smallest difference in the unit of the file
   * @return a sentence
   */
  public static String tooSmall(MeasureWords measure, long deals, double detectable) {
    return tooSmall(measure, deals, detectable, detectable);
  }

  /** The same of several comparisons, from the finest to the coarsest. */
  static String tooSmall(MeasureWords measure, long deals, double least, double most) {
    String fine = upTo(100 * least);
    String coarse = upTo(100 * most);
    String size =
        fine.equals(coarse) ? fine : "%s to %s (by way of playing)".formatted(fine, coarse);
    return "The smallest difference that a run of %s deals would catch nine times out of ten is %s %s; there may be a smaller one."
        .formatted(CellText.grouped(Long.toString(deals)), size, measure.unit());
  }

  /**
   * A p value: two significant digits, never 0.
   *
   * @param p the p value
   * @return the words
   */
  public static String p(double p) {
    if (p < LEAST_P) {
      return "< 0.0001";
    }
    return p >= 1 ? "1" : new BigDecimal(p).round(new MathContext(2)).toPlainString();
  }

  /**
   * A p value that may be missing.
   *
   * @param p the p value
   * @return the words
   */
  public static String p(OptionalDouble p) {
    return p.isPresent() ? p(p.getAsDouble()) : "";
  }

  /**
   * A size that nothing smaller is promised for: two significant digits or all before the point.
   *
   * @param size the size
   * @return the words
   */
  public static String upTo(double size) {
    if (!(size > 0)) {
      return "0";
    }
    BigDecimal whole = new BigDecimal(size).round(new MathContext(15));
    int places = Math.max(0, Rounding.places(size));
    return CellText.grouped(whole.setScale(places, RoundingMode.UP).toPlainString());
  }

  /**
   * A number to so many significant digits.
   *
   * @param number the number
   * @param digits significant digits
   * @return the words
   */
  public static String rounded(double number, int digits) {
    BigDecimal few = new BigDecimal(number).round(new MathContext(digits, RoundingMode.HALF_UP));
    return CellText.grouped(few.stripTrailingZeros().toPlainString());
  }

  /**
   * A level of confidence in 100.
   *
   * @param confidence the level of ranges, between 0 and 1
   * @return the words
   */
  public static String level(double confidence) {
    return rounded(100 * confidence, 6);
  }

  /**
   * A name between quotation marks.
   *
   * @param name the name in files
   * @return the words
   */
  public static String quoted(String name) {
    return "\u201c" + name + "\u201d";
  }
}
