package org.tallywall.experiments.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.design.StudyPlayer;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.strategies.catalog.Catalog;

/**
 * Papers read files by the names of their columns, and a name that a file does not have is a hole
 * in the paper that nobody sees. So every name that stands in the sources of the papers must be
 * that of a column which some design writes, in the files that the class reads.
 */
class ColumnsAskedForTest {
  private static final Path PAPERS = Path.of("src/main/java/org/tallywall/experiments/paper");

  /** The ways in which the papers' sources name a column. */
  private static final Pattern ASKED =
      Pattern.compile(
          "(?:(?:\\b(?:row|best|won|sought|one)|row\\(\\)|get\\(\\w+\\))\\."
              + "(?:text|number|count|need|ranged)"
              + "|Pick\\.(?:count|mean|rangeInHundred)"
              + "|\\b(?:perGame|aimed|new End)"
              + "|\\b(?:count|rounded)\\(one, |\\b(?:ofGames|won)\\(row, |\\bmost\\(rows, "
              + "|Pick\\.words(?=\\(\\s*\"[^\"]*\",\\s*\"[^\"]*\"\\)))"
              + "\\(?\\s*\"([a-z0-9-]+)\"");

  /** The files that a class reads; any other may read all. */
  private static final Map<String, List<String>> FILES =
      Map.of(
          "WinTables", List.of("win-rates"),
          "AimTables", List.of("hand-choice", "families"),
          "AimChart", List.of("hand-choice", "families"),
          "CourseTables", List.of("endings", "passes"),
          "StepTable", List.of("defence"),
          "EffectTables", List.of("branch"),
          "RatingTable", List.of("ratings"),
          "Difference", List.of("differences"),
          "DifferenceTables", List.of("differences"));

  private static final String CARD =
      """
      { "card": "Painter test card", "families": [
        { "family": "Ladders", "lines": [
          { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 } ] } ] }
      """;

  private static final List<String> DESIGNS =
      List.of(
          "\"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]",
          "\"arms\": { \"a\": \"nearest\", \"b\": \"random-legal\" }, \"baseline\": \"a\","
              + " \"others\": \"nearest\", \"primary\": \"points\"",
          "\"sweep\": { \"player\": \"reckoner\", \"setting\": \"aim.targets\", \"values\": [1, 2],"
              + " \"baseline\": 1 }, \"others\": \"nearest\", \"primary\": \"points\"",
          "\"round-robin\": { \"a\": \"nearest\", \"b\": \"nearest\", \"c\": \"random-legal\","
              + " \"d\": \"random-legal\" }",
          "\"branch\": { \"at\": \"discard\", \"when\": { \"exposures-on-one-rack\": [1],"
              + " \"away\": [3], \"wall\": [60] }, \"options\": [\"own-need\", \"safest\"],"
              + " \"player\": \"watchful\" }, \"primary\": \"points\"");

  @TempDir Path folder;

  @Test
  void namesOfColumns_inTheSourcesOfThePapers_areColumnsThatAreWritten() throws IOException {
    Map<String, Set<String>> written = written();
    Set<String> all = new HashSet<>();
    written.values().forEach(all::addAll);
    int asked = 0;
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> sources = Files.list(PAPERS)) {
      for (Path source : sources.sorted().toList()) {
        String name = source.getFileName().toString().replace(".java", "");
        Set<String> there = new HashSet<>();
        FILES.getOrDefault(name, List.of()).forEach(file -> there.addAll(written.get(file)));
        Matcher found = ASKED.matcher(Files.readString(source));
        while (found.find()) {
          asked++;
          if (!(there.isEmpty() ? all : there).contains(found.group(1))) {
            missing.add(name + ": " + found.group(1));
          }
        }
      }
    }

    assertThat(missing).isEmpty();
    assertThat(asked).isGreaterThan(100);
  }

  /** The names of the columns in each file, of all designs together. */
  private Map<String, Set<String>> written() throws IOException {
    Files.writeString(folder.resolve("card.json"), CARD);
    Map<String, Set<String>> columns = new TreeMap<>();
    for (String design : DESIGNS) {
      for (Table table : tables(design)) {
        Set<String> names = columns.computeIfAbsent(table.stem(), stem -> new TreeSet<>());
        table.spread().columns().stream().map(Column::name).forEach(names::add);
      }
    }
    return columns;
  }

  private List<Table> tables(String design) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("study.json"),
            "{ \"study\": \"s\", \"card\": \"card.json\", \"seed\": 1, \"deals\": 2, %s }"
                .formatted(design));
    Study study = StudyFile.read(file, Changes.NONE, Catalog.standard());
    ConcreteHands hands = new ConcreteHands(study.card());
    StudyPlayer player = new StudyPlayer(study, new TableSetup(hands, study.rules()), new Pulse());
    StudyTally tally = player.play(Block.of(0, 2, 2), new RunState(2, 2, 0)).tally();
    return PlayedDesign.of(study).allTables(new StudyAnswer(study, hands, tally, Optional.empty()));
  }
}
