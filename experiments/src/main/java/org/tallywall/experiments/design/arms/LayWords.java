package org.tallywall.experiments.design.arms;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.study.Measure;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.table.Rounding.Rounded;

/**
 * Says a difference as one would at the table: per 100 games, clear only where the range leaves
 * zero out, and never "no difference".
 */
final class LayWords {
  private static final int HUNDRED = 100;
  private static final int PLACES = 2;

  private LayWords() {}

  /** One or two sentences about a measure of one way of playing against another. */
  static String of(String arm, String baseline, Measure measure, Estimate estimate) {
    if (estimate.interval().isEmpty()) {
      return "On the same deals too little was played to say how far %s and %s are apart in %s."
          .formatted(arm, baseline, measure.words());
    }
    Interval interval = estimate.interval().get();
    Rounded shown =
        Rounding.interval(
            HUNDRED * estimate.value(),
            HUNDRED * interval.low(),
            HUNDRED * interval.high(),
            PLACES);
    if (interval.low() == 0 && interval.high() == 0) {
      return "On the same deals %s and %s did exactly alike in %s."
          .formatted(arm, baseline, measure.words());
    }
    if (interval.low() > 0 || interval.high() < 0) {
      return clear(arm, baseline, measure, shown);
    }
    return "We could not tell %s and %s apart in %s: the gap could be anything from %s %s to %s %s."
        .formatted(
            arm,
            baseline,
            measure.words(),
            number(shown.low().abs()),
            shown.low().signum() < 0 ? "fewer" : "more",
            number(shown.high().abs()),
            "more " + unit(measure));
  }

  private static String clear(String arm, String baseline, Measure measure, Rounded shown) {
    boolean more = shown.estimate().signum() >= 0;
    BigDecimal near = more ? shown.low() : shown.high().negate();
    BigDecimal far = more ? shown.high() : shown.low().negate();
    return "On the same deals %s %s about %s %s than %s (%s to %s)."
        .formatted(
            arm,
            verb(measure),
            number(shown.estimate().abs()),
            what(measure, more),
            baseline,
            number(near),
            number(far));
  }

  private static String verb(Measure measure) {
    return switch (measure) {
      case POINTS -> "made";
      case WIN_RATE, WON_ON_OWN_DRAW, WON_ON_DISCARD, WON_AFTER_REDEEMING, WON_JOKERLESS -> "won";
      case THREW_THE_WINNING_TILE -> "threw the winning tile in";
      case WALL_GAMES -> "had";
      case ONE_AWAY_REACHED -> "came to one away in";
      case ONLY_PAID -> "only paid in";
      case EXPOSURES -> "made";
      case EXCHANGES -> "redeemed";
    };
  }

  private static String what(Measure measure, boolean more) {
    String word = more ? "more" : "fewer";
    return switch (measure) {
      case POINTS -> word + " points in 100 games";
      case WON_ON_OWN_DRAW -> word + " games in 100 on its own draw";
      case WON_ON_DISCARD -> word + " games in 100 on a discard";
      case WON_AFTER_REDEEMING -> word + " games in 100 after redeeming a joker";
      case WON_JOKERLESS -> word + " games in 100 jokerless";
      case WALL_GAMES -> word + " wall games in 100";
      case EXPOSURES -> word + " exposures in 100 games";
      case EXCHANGES -> word + " jokers in 100 games";
      default -> word + " games in 100";
    };
  }

  private static String unit(Measure measure) {
    return measure == Measure.POINTS ? "points in 100 games" : "in 100 games";
  }

  private static String number(BigDecimal number) {
    BigDecimal shown = number.scale() < 0 ? number.setScale(0, RoundingMode.UNNECESSARY) : number;
    return CellText.grouped(shown.toPlainString());
  }
}
