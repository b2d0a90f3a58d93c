package org.tallywall.experiments.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;

/** The page about position sheets: every example in it is put to a player as it stands there. */
class SheetsPageTest {
  private static final int SEEDS = 20;
  private static final String PAGE = page();
  private static final Pattern EXAMPLE = Pattern.compile("(?s)```sheet\n(.*?)```");
  private static final TableSetup TABLE =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("scenes", "heron-reach", "card.json")).orThrow()),
          TableRules.STANDARD);

  private static String page() {
    try {
      return Files.readString(Path.of("SHEETS.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<String> examples() {
    return EXAMPLE.matcher(PAGE).results().map(found -> found.group(1)).toList();
  }

  private static List<PositionSheet> sheets() {
    return examples().stream().map(text -> PositionSheet.of("SHEETS.md", text, TABLE)).toList();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void example_asItStands_isAnsweredAsItSays(String text) {
    PositionSheet sheet = PositionSheet.of("SHEETS.md", text, TABLE);
    assertThat(sheet.expect()).isNotEmpty();
    assertThat(sheet.discardsLeftOut()).isZero();
    SceneAnswers answers =
        SceneAnswers.of(sheet, Catalog.standard().type("watchful").orElseThrow().maker(), SEEDS);
    assertThat(answers.expected()).as(answers.counts().toString()).isEqualTo(SEEDS);
    assertThat(answers.ruledOut()).isZero();
  }

  /** Of each question there is an example, of the passes one for each of the six. */
  @Test
  void examples_haveEveryMoment() {
    Set<String> asked = new TreeSet<>();
    for (PositionSheet sheet : sheets()) {
      Moment moment = sheet.moment();
      asked.add(
          moment instanceof Moment.Pass pass
              ? pass.step().text()
              : moment.getClass().getSimpleName());
      if (moment instanceof Moment.Turn turn) {
        asked.add(turn.drawn() < 0 ? "not said what was drawn" : "drew");
        asked.add(turn.claimed() ? "claimed" : "not claimed");
      }
    }
    for (PassStep step : PassStep.values()) {
      assertThat(asked).contains(step.text());
    }
    for (Class<?> kind : Moment.class.getPermittedSubclasses()) {
      assertThat(kind == Moment.Pass.class || asked.contains(kind.getSimpleName()))
          .as(kind.getSimpleName())
          .isTrue();
    }
    assertThat(asked).contains("drew", "not said what was drawn", "claimed");
    assertThat(examples().toString())
        .contains("blind 2", "claim *", "then throw", "exchange 8c seat 2 then", "then mahjong");
  }

  /** Each line that a sheet may have stands in the table of the page, and no other. */
  @Test
  void table_listsEveryLine() {
    String known = unknown("nonsense 1");
    Set<String> listed = new TreeSet<>();
    Pattern.compile("(?m)^\\| `([a-z]+)[^|]*\\| [^|]+ \\|[^|\n]*\\|$")
        .matcher(PAGE)
        .results()
        .map(found -> found.group(1))
        .forEach(listed::add);
    assertThat(listed).containsExactlyInAnyOrder(known.split(", "));
  }

  /** The page beside the scenes names one for each question, and leads here. */
  @Test
  void readmeOfScenes_namesASceneOfEveryMoment() throws IOException {
    Path scenes = Path.of("scenes");
    String readme = Files.readString(scenes.resolve("README.md"));
    assertThat(scenes.resolve("../SHEETS.md")).exists();
    assertThat(readme).contains("](../SHEETS.md)");
    Set<Class<?>> asked = new HashSet<>();
    Pattern.compile("`([a-z-]+/[a-z-]+\\.txt)`")
        .matcher(readme)
        .results()
        .map(found -> PositionSheet.read(scenes.resolve(found.group(1)), TABLE).moment())
        .forEach(moment -> asked.add(moment.getClass()));
    assertThat(asked).containsExactlyInAnyOrder(Moment.class.getPermittedSubclasses());
    assertThat(readme).contains("`heron-reach`", "`heron-reach-further`", "`saltmarsh-quay`");
  }

  /** Every answer that the last table shows is one. */
  @Test
  void table_ofAnswers_isOfAnswers() {
    String answers = PAGE.substring(PAGE.indexOf("## What may be expected"));
    List<String> written =
        Pattern.compile("(?m)^\\| (`.*`) \\|")
            .matcher(answers)
            .results()
            .map(found -> found.group(1))
            .flatMap(cell -> Pattern.compile("`([^`]+)`").matcher(cell).results())
            .map((MatchResult found) -> found.group(1))
            .toList();
    assertThat(written).hasSizeGreaterThan(15);
    for (String answer : written) {
      assertThat(faults("expect " + answer)).as(answer).doesNotContain(":1:");
    }
  }

  private static String unknown(String line) {
    return faults(line).replaceAll("(?s).*?\\(known: ([^)]*)\\).*", "$1");
  }

  /** The faults of a sheet with that line alone; what is missing has no place in it. */
  private static String faults(String line) {
    try {
      PositionSheet.of("one", line, TABLE);
      return "";
    } catch (RuntimeException faulty) {
      return faulty.getMessage();
    }
  }
}
