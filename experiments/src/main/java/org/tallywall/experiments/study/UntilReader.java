package org.tallywall.experiments.study;

import java.util.List;
import java.util.Optional;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;

/** Reads when a study may stop before its last deal. */
public final class UntilReader {
  private static final String EXPECTED_SD = "expected-sd";
  private static final String EXPECTED_DISCORDANCE = "expected-discordance";
  private static final String HALF_WIDTH = "half-width";
  private static final String CLEAR = "clear";
  private static final List<String> KNOWN =
      List.of(
          "rule",
          HALF_WIDTH,
          CLEAR,
          "at-most",
          EXPECTED_SD,
          EXPECTED_DISCORDANCE,
          "difference",
          "false-alarm",
          "miss");
  private static final double LARGE = 1e9;

  private final FieldReader fields;
  private final Optional<Measure> primary;

  /**
   * A reader of a rule.
   *
   * @param node what is written
   * @param faults takes what is wrong
   * @param primary the study's primary measure, where it has one
   */
  public UntilReader(Node node, Faults faults, Optional<Measure> primary) {
    this.fields = new FieldReader(node, "\"until\"", faults, KNOWN);
    this.primary = primary;
  }

  /**
   * Reads the rule.
   *
   * @return the rule; of no use where it has a fault
   */
  public Until read() {
    fields.require("at-most", "the most deals to play, as in \"at-most\": 200000");
    long most = fields.whole("at-most", 1, 1, Extent.MOST_DEALS);
    fields.require("rule", "\"always-valid\" or \"sprt\"");
    String rule = fields.text("rule", "always-valid");
    List<String> rules = List.of("always-valid", "sprt");
    if (!rules.contains(rule)) {
      fields.fault("rule", "unknown rule \"%s\"%s".formatted(rule, Nearest.advice(rule, rules)));
    }
    return rule.equals("sprt") ? test(most) : range(most);
  }

  private Until range(long most) {
    refuse("sprt", "difference", "false-alarm", "miss");
    boolean clear = fields.flag(CLEAR, false);
    if (clear == fields.has(HALF_WIDTH)) {
      fields.fault(
          clear ? CLEAR : "rule",
          "say what is to be reached: either \"half-width\": 0.3 or \"clear\": true");
    }
    double half = fields.has(HALF_WIDTH) ? fields.between(HALF_WIDTH, 1, 0, LARGE) : 0;
    Until.Goal goal = clear ? Until.Goal.CLEAR : Until.Goal.HALF_WIDTH;
    return new Until(Until.Rule.ALWAYS_VALID, goal, half, most, expected(), Optional.empty());
  }

  private Until test(long most) {
    refuse("always-valid", HALF_WIDTH, CLEAR, EXPECTED_SD);
    fields.require(
        "difference",
        "the difference worth finding, as a share of games: \"difference\": 0.01 is 1 game in 100");
    double difference = fields.between("difference", 0.01, 0, 1);
    double falseAlarm = fields.between("false-alarm", 0.05, 0, 0.5);
    double miss = fields.between("miss", 0.1, 0, 0.5);
    Optional<Double> expected = expected();
    if (expected.isPresent() && difference >= expected.get()) {
      fields.fault(
          "difference",
          "the difference, a share of games (0.01 is 1 game in 100), must be smaller than the share"
              + " of deals that differ");
    }
    if (primary.isPresent() && !primary.get().isRate()) {
      fields.fault(
          "rule",
          "the rule \"sprt\" takes a primary measure that counts games, such as win-rate: of points"
              + " and other numbers without bounds no sequential test knows its chance of a false"
              + " alarm; write \"rule\": \"always-valid\" with \"clear\": true or a"
              + " \"half-width\"");
    }
    return new Until(
        Until.Rule.SPRT,
        Until.Goal.CLEAR,
        0,
        most,
        expected,
        Optional.of(new Until.Test(difference, falseAlarm, miss)));
  }

  private Optional<Double> expected() {
    boolean rate = primary.isPresent() && primary.get().isRate();
    String right = rate ? EXPECTED_DISCORDANCE : EXPECTED_SD;
    String wrong = rate ? EXPECTED_SD : EXPECTED_DISCORDANCE;
    if (fields.has(wrong)) {
      fields.fault(wrong, "with this primary measure write \"%s\" instead".formatted(right));
    }
    return fields.has(right)
        ? Optional.of(fields.between(right, 0.5, 0, rate ? 1 : LARGE))
        : Optional.empty();
  }

  private void refuse(String rule, String... names) {
    for (String name : names) {
      if (fields.has(name)) {
        fields.fault(name, "\"%s\" belongs to the rule \"%s\"; take it out".formatted(name, rule));
      }
    }
  }
}
