package org.tallywall.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every rule and every worked case that is cited somewhere stands in {@code RULES.md}. */
class RulesDocumentTest {
  private static final Path RULES = Path.of("RULES.md");
  private static final Path CORE = Path.of("src");
  private static final List<Path> EVERYWHERE =
      List.of(
          CORE,
          Path.of("../strategies"),
          Path.of("../reports/src"),
          Path.of("../experiments"),
          Path.of("../README.md"),
          Path.of("../DEVELOPERS.md"),
          Path.of("../CHANGELOG.md"));

  private static final String NUMBER = "[1-9]\\.\\d+(?:\\.\\d+)?";
  private static final Pattern ONE = Pattern.compile(NUMBER);

  /** As in "rule 2.6" or "rules 3.4 and 3.5". */
  private static final Pattern NAMED =
      Pattern.compile("\\brules?\\s+" + NUMBER + "(?:(?:,| and| to| or)\\s+" + NUMBER + ")*");

  /** As in "(5.2)" or "(7.2, 7.4)"; figures in brackets have other digits. */
  private static final Pattern IN_BRACKETS =
      Pattern.compile("\\([1-9]\\.[1-9](?:\\.\\d+)?(?:, [1-9]\\.[1-9](?:\\.\\d+)?)*\\)");

  private static final Pattern SECTION =
      Pattern.compile("\\(section (\\d+)\\)|section (\\d+) of the rules");
  private static final Pattern CASE = Pattern.compile("\\bEC-(\\d\\da?)");
  private static final Pattern CASE_TEST = Pattern.compile("\\bvoid ec(\\d\\da?)_");
  private static final Pattern DEFINED =
      Pattern.compile("(?m)^(?:#{2,3} |\\*\\*)(\\d+(?:\\.\\d+)*)(?:\\.? |\\*\\* )");
  private static final Pattern LISTED = Pattern.compile("(?m)^- EC-(\\d\\da?): \\S");
  private static final Pattern SWITCH = Pattern.compile("`([a-z]+\\.[A-Za-z.]+)`");

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<Path> files(Path root) {
    try (Stream<Path> files = Files.walk(root)) {
      return files
          .filter(file -> file.toString().matches(".*\\.(java|md)"))
          .filter(file -> !file.toString().matches(".*[/\\\\]target[/\\\\].*"))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> all(Pattern pattern, String text) {
    Set<String> found = new TreeSet<>();
    for (Matcher matcher = pattern.matcher(text); matcher.find(); ) {
      for (int group = 1; group <= matcher.groupCount(); group++) {
        if (matcher.group(group) != null) {
          found.add(matcher.group(group));
        }
      }
    }
    return found;
  }

  /** The single numbers in everything that a pattern finds. */
  private static Set<String> numbers(Pattern pattern, String text) {
    return pattern
        .matcher(text)
        .results()
        .flatMap(found -> ONE.matcher(found.group()).results())
        .map(found -> found.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Where each number that is cited was found. */
  private static Map<String, Path> cited() {
    Map<String, Path> cited = new TreeMap<>();
    for (Path root : EVERYWHERE) {
      for (Path file : files(root)) {
        String text = read(file);
        numbers(NAMED, text).forEach(number -> cited.put(number, file));
        if (root.equals(CORE)) {
          numbers(IN_BRACKETS, text).forEach(number -> cited.put(number, file));
          all(SECTION, text).forEach(number -> cited.put(number, file));
        }
      }
    }
    return cited;
  }

  @Test
  void everyRuleCited_standsInTheDocument() {
    Map<String, Path> cited = cited();
    assertThat(cited).hasSizeGreaterThan(50).containsKeys("2.6", "5.2", "6.4.2", "8");
    cited.keySet().removeAll(all(DEFINED, read(RULES)));
    assertThat(cited).as("cited there, but no rule of RULES.md").isEmpty();
  }

  @Test
  void rules_haveNumbersOfTheirOwn() {
    List<String> numbers =
        DEFINED.matcher(read(RULES)).results().map(found -> found.group(1)).toList();
    assertThat(numbers).doesNotHaveDuplicates().hasSizeGreaterThan(120);
    for (String number : numbers) {
      int point = number.lastIndexOf('.');
      assertThat(point < 0 || numbers.contains(number.substring(0, point))).as(number).isTrue();
    }
  }

  @Test
  void everyCase_isListedOnceAndHasATest() {
    List<String> listed =
        LISTED.matcher(read(RULES)).results().map(found -> found.group(1)).toList();
    assertThat(listed).doesNotHaveDuplicates();
    Set<String> tested = new TreeSet<>();
    files(CORE).forEach(file -> tested.addAll(all(CASE_TEST, read(file))));
    assertThat(new TreeSet<>(listed)).isEqualTo(tested);
  }

  @Test
  void everyCaseCited_isListed() {
    Set<String> listed = all(LISTED, read(RULES));
    for (Path root : EVERYWHERE) {
      for (Path file : files(root)) {
        assertThat(listed).as(file.toString()).containsAll(all(CASE, read(file)));
      }
    }
  }

  @Test
  void everySwitchNamed_isOne() {
    String switches = read(CORE.resolve("main/java/org/tallywall/core/rules/RuleSwitches.java"));
    Set<String> named = all(SWITCH, read(RULES));
    assertThat(named).hasSizeGreaterThan(20);
    assertThat(named).allMatch(name -> switches.contains("\"" + name + "\""));
  }
}
