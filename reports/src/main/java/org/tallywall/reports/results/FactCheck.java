package org.tallywall.reports.results;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.tallywall.reports.schema.Show;
import org.tallywall.reports.table.Values;
import org.tallywall.reports.table.Visible;

/**
 * Judges the fields that papers use. One that is not there is no fault; one that is there and is
 * something else than it should be would put a wrong figure or a wrong sentence on paper.
 */
final class FactCheck {
  private static final int MOST_LETTERS = CsvFileReader.MOST_LETTERS;
  private static final List<String> STATES = List.of("running", "stopped", "complete");

  private final Path file;
  private final Map<String, Object> fields;

  private FactCheck(Path file, Map<String, Object> fields) {
    this.file = file;
    this.fields = fields;
  }

  /** Judges where results came from. */
  static void manifest(Path file, Facts facts) {
    FactCheck check = new FactCheck(file, facts.all());
    for (String name :
        List.of("tallywall", "study", "study-digest", "card", "card-digest", "rules-digest")) {
      check.text(name);
    }
    check.that("study", "a name", value -> value instanceof String name && !name.isBlank());
    check.oneOf("state", STATES);
    check.count("deals");
    check.count("games");
    check.count("faults");
    check.whole(facts, "seed");
    check.whole(facts, "stream-version");
    check.that("files", "a list of names", FactCheck::isNames);
    check.object("derived");
    check.object(Provisional.FIELD);
    if (facts.has(Provisional.FIELD)) {
      FactCheck early = new FactCheck(file, facts.object(Provisional.FIELD));
      early.that("deals", "a whole number, 1 or more", FactCheck::isSome);
      early.count("games");
      early.count("faults");
    }
  }

  /** Judges the study. */
  static void study(Path file, Facts facts) {
    FactCheck check = new FactCheck(file, facts.all());
    check.text("question");
    check.text("primary");
    check.oneOf(Show.FIELD, Show.names());
    check.count("deals");
    check.count("first-planned");
    check.that("confidence", "a number between 0 and 1", FactCheck::isLevel);
    check.that("others", "a player", FactCheck::isPlayer);
    check.object("sweep");
    check.object("until");
    check.object("branch");
    FactCheck branch = new FactCheck(file, facts.object("branch"));
    branch.text("at");
    branch.object("when");
    new FactCheck(file, facts.object("sweep")).text("setting");
  }

  private void text(String name) {
    that(name, "a text of at most 10,000 letters", FactCheck::isText);
  }

  private void oneOf(String name, List<String> words) {
    that(name, "\"" + String.join("\" or \"", words) + "\"", words::contains);
  }

  private void count(String name) {
    that(name, "a whole number, 0 or more", FactCheck::isCount);
  }

  private void whole(Facts facts, String name) {
    that(name, "a whole number", value -> facts.whole(name).isPresent());
  }

  private void object(String name) {
    that(name, "an object in braces", value -> value instanceof Map<?, ?>);
  }

  private void that(String name, String expected, Predicate<Object> right) {
    Object value = fields.get(name);
    if (fields.containsKey(name) && (value == null || !right.test(value))) {
      throw new WrongResultsException(
          "\"%s\", field \"%s\": expected %s, got %s%s"
              .formatted(
                  Visible.line(file.toString()),
                  name,
                  expected,
                  Visible.inShort(String.valueOf(value)),
                  CsvFile.REMEDY));
    }
  }

  private static boolean isText(Object value) {
    return value instanceof String text && text.length() <= MOST_LETTERS;
  }

  private static boolean isNames(Object value) {
    return value instanceof List<?> names && names.stream().allMatch(FactCheck::isText);
  }

  private static boolean isPlayer(Object value) {
    return isText(value) || value instanceof Map<?, ?> fields && isText(fields.get("player"));
  }

  /** Compared before it is turned into digits, of which a short number may have very many. */
  private static boolean isCount(Object value) {
    return value instanceof BigDecimal number
        && number.signum() >= 0
        && number.compareTo(new BigDecimal(Values.FURTHEST)) <= 0
        && number.stripTrailingZeros().scale() <= 0;
  }

  private static boolean isSome(Object value) {
    return isCount(value) && ((BigDecimal) value).signum() > 0;
  }

  private static boolean isLevel(Object value) {
    double level = value instanceof BigDecimal number ? number.doubleValue() : 0;
    return level > 0 && level < 1;
  }
}
