package org.tallywall.reports.words;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.reports.results.CsvFile;
import org.tallywall.reports.results.Ranged;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.DifferenceColumns;
import org.tallywall.reports.schema.StoppingColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Rounding;

/** What is said of a run that could stop early: which deals count, its rule, where it ended. */
public final class Stops {
  private static final String VERDICT = "verdict";

  private final CsvFile.Row row;
  private final List<CsvFile.Row> rows;
  private final double confidence;

  /** Whether the run goes on, or could: its figures were written before it stopped. */
  private final boolean open;

  private Stops(List<CsvFile.Row> rows, Results results) {
    this.row = rows.get(0);
    this.rows = rows;
    this.confidence = results.confidence();
    this.open = results.provisional().isPresent();
  }

  /**
   * The run's rule; empty where the number of deals was fixed before.
   *
   * @param results what a results folder holds
   * @return what there is, if there is any
   */
  public static Optional<Stops> of(Results results) {
    List<CsvFile.Row> rows = results.rows(StoppingColumns.FILE);
    return rows.isEmpty() ? Optional.empty() : Optional.of(new Stops(rows, results));
  }

  /** Whether a sequential test answers the question. */
  boolean tests() {
    return row.text(StoppingColumns.GOAL).equals(VERDICT);
  }

  /**
   * What the test says of each comparison, as the file names it.
   *
   * @return the words by way of playing and measure; empty ones where there is no test
   */
  Map<List<String>, String> verdicts() {
    Map<List<String>, String> verdicts = new HashMap<>();
    for (CsvFile.Row one : rows) {
      List<String> comparison =
          List.of(one.text(StoppingColumns.ARM), one.text(StoppingColumns.MEASURE));
      verdicts.putIfAbsent(comparison, one.text(StoppingColumns.VERDICT));
    }
    return verdicts;
  }

  /**
   * How many deals count, and after how many that do not.
   *
   * @param results what a results folder holds
   * @return the words
   */
  public static String counted(Results results) {
    String deals = grouped(results.deals()) + " deals";
    long pilot = of(results).map(rule -> rule.row.count(StoppingColumns.PILOT)).orElse(0L);
    return pilot == 0
        ? deals
        : "%s count (after %s that only showed what to expect)".formatted(deals, grouped(pilot));
  }

  /**
   * The deals that count, and those that do not.
   *
   * @return the words
   */
  public String deals() {
    String counted =
        span(row.count(StoppingColumns.FIRST_DEAL), row.count(StoppingColumns.LAST_DEAL));
    long pilot = row.count(StoppingColumns.PILOT);
    return pilot == 0
        ? counted
        : counted + " (" + span(0, pilot - 1) + " only showed what to expect and are left out)";
  }

  private static String span(long first, long last) {
    return "deals " + grouped(first) + " to " + grouped(last);
  }

  /**
   * How it looked, for what, and where it ended.
   *
   * @return the words
   */
  public String told() {
    long looks = row.count(StoppingColumns.LOOKS);
    boolean reached = row.text(StoppingColumns.REACHED).equals("yes");
    return "The deals that count are %s. Their number was not fixed: the run looked at its numbers every %s deals and was to stop %s, or after %s deals at the latest. It looked %s and %s.%s"
            .formatted(
                span(row.count(StoppingColumns.FIRST_DEAL), row.count(StoppingColumns.LAST_DEAL)),
                grouped(row.count(StoppingColumns.EVERY)),
                goal(),
                grouped(row.count(StoppingColumns.AT_MOST)),
                looks == 1 ? "once" : grouped(looks) + " times",
                ended(reached),
                chances())
        + " Its ranges hold at every look, so they are wider than those of a run with a fixed number of deals.";
  }

  private String ended(boolean reached) {
    if (reached) {
      return "stopped there";
    }
    return open ? "has not stopped yet" : "reached its last deal without getting there";
  }

  private String goal() {
    String measure = row.text(StoppingColumns.MEASURE);
    String each = rows.size() > 1 ? " for every comparison" : "";
    return switch (row.text(StoppingColumns.GOAL)) {
      case "half-width" ->
          "once the range of the question (%s) was no wider than \u00b1%s%s"
              .formatted(heading(measure), size(measure), each);
      case VERDICT -> "once Wald\u2019s sequential test had decided" + each;
      default ->
          "once the range of the question (%s) left out 0%s".formatted(heading(measure), each);
    };
  }

  private static String heading(String measure) {
    return MeasureWords.of(measure).map(MeasureWords::heading).orElse(measure);
  }

  /**
   * The half-width, or the difference worth finding.
   *
   * @param measure what was measured
   * @return such as "1 game in 100"
   */
  public String size(String measure) {
    OptionalDouble size = row.number(StoppingColumns.SIZE);
    String number = size.isPresent() ? Wording.rounded(100 * size.getAsDouble(), 3) : "?";
    return number + " " + unit(measure, number);
  }

  private static String unit(String measure, String number) {
    String unit = MeasureWords.of(measure).map(MeasureWords::unit).orElse("in 100 games");
    return number.equals("1") ? unit.replaceFirst("^(game|point|exposure|joker)s", "$1") : unit;
  }

  /** What the test was set to; nothing where there is none. */
  private String chances() {
    if (!tests()) {
      return "";
    }
    return " The test was set to tell a difference of %s from none at all: if there is none, it claims one in at most %s of 100 runs; if there is one of that size, it misses it in at most %s of 100."
        .formatted(
            size(row.text(StoppingColumns.MEASURE)),
            hundred(StoppingColumns.FALSE_ALARM),
            hundred(StoppingColumns.MISS));
  }

  private String hundred(Column column) {
    return Wording.rounded(100 * row.need(column), 3);
  }

  /**
   * The verdict on a comparison, with what was measured.
   *
   * @param one the comparison
   * @return the words
   */
  public String sentence(Compared one) {
    String arm = Wording.quoted(one.arm());
    String baseline = Wording.quoted(one.baseline());
    Optional<MeasureWords> words = MeasureWords.of(one.measure());
    String did = words.map(MeasureWords::past).orElse(one.measure());
    String unit = words.map(MeasureWords::unit).orElse("in 100 games");
    return switch (one.verdict()) {
      case "more" ->
          "On the same deals, %s %s more %s than %s%s"
              .formatted(arm, did, unit, baseline, says(one));
      case "fewer" ->
          "On the same deals, %s %s fewer %s than %s%s"
              .formatted(arm, did, unit, baseline, says(one));
      case "none of that size" ->
          "On the same deals, %s and %s are less than %s apart (%s), by the sequential test, which is wrong about that in at most %s of 100 runs%s"
              .formatted(
                  arm,
                  baseline,
                  size(one.measure()),
                  heading(one.measure()),
                  hundred(StoppingColumns.MISS),
                  measured(one));
      default ->
          "The sequential test could not decide between %s and %s in %s deals (%s)%s"
              .formatted(
                  arm,
                  baseline,
                  grouped(one.row().count(DifferenceColumns.DEALS)),
                  heading(one.measure()),
                  measured(one));
    };
  }

  private String says(Compared one) {
    return ", by the sequential test" + measured(one);
  }

  private String measured(Compared one) {
    Optional<Ranged> hundred = one.inHundred();
    if (hundred.isEmpty()) {
      return ".";
    }
    Rounding.Rounded shown =
        Rounding.interval(hundred.get().value(), hundred.get().low(), hundred.get().high(), 1);
    String unit = unit(one.measure(), shown.estimate().abs().toPlainString());
    return "; the difference measured is %s %s (%s to %s)."
        .formatted(sided(shown.estimate()), unit, sided(shown.low()), sided(shown.high()));
  }

  /** A difference with a word in place of its sign. */
  private static String sided(BigDecimal number) {
    String size = CellText.grouped(number.abs().toPlainString());
    return number.signum() == 0 ? size : size + (number.signum() > 0 ? " more" : " fewer");
  }

  /**
   * A few words for the column that says what is clear.
   *
   * @param one the comparison
   * @return the words
   */
  public String inShort(Compared one) {
    return switch (one.verdict()) {
      case "more" -> "yes, more, by the test";
      case "fewer" -> "yes, less, by the test";
      case "none of that size" -> "less than " + size(one.measure()) + " apart, by the test";
      default -> "not decided by the test";
    };
  }

  /**
   * What makes a difference clear in such a run.
   *
   * @param several whether several comparisons are shown
   * @return the words
   */
  public String clear(boolean several) {
    String range =
        "In %s of 100 such runs, the range in parentheses holds the true number at every look; the two columns before it have no range."
            .formatted(Wording.level(confidence));
    String test =
        tests()
            ? " Where a cell says \u201cby the test\u201d, the test decided, not the range."
            : "";
    return range
        + " A difference is clear where its range leaves out 0."
        + test
        + (several ? " Each comparison is taken by itself; they are not counted together." : "");
  }

  private static String grouped(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
