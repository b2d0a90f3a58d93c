package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.text.Sha256;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyLayout;
import org.tallywall.strategies.catalog.Catalog;

/**
 * What blocks hold, pinned for each design. Whoever changes what is counted, or its order, raises
 * {@link Checkpoint#FORMAT} and writes a line under the others in {@code block-layouts.txt}.
 */
class BlockLayoutTest {
  private static final String PINS = "block-layouts.txt";

  private static final Map<String, String> STUDIES =
      new LinkedHashMap<>(
          Map.of(
              "table",
              "\"table\": [\"nearest\", \"nearest\", \"nearest\", \"nearest\"]",
              "arms",
              "\"arms\": { \"a\": \"nearest\", \"b\": \"newcomer\", \"c\": \"watchful\" },"
                  + " \"baseline\": \"a\", \"others\": \"nearest\", \"primary\": \"points\"",
              "sweep",
              "\"sweep\": { \"player\": \"reckoner\", \"setting\": \"aim.targets\","
                  + " \"values\": [1, 2], \"baseline\": 1 }, \"others\": \"nearest\","
                  + " \"primary\": \"points\"",
              "round-robin",
              "\"round-robin\": { \"a\": \"nearest\", \"b\": \"newcomer\", \"c\": \"watchful\","
                  + " \"d\": \"reckoner\", \"e\": \"random-legal\" }",
              "branch",
              "\"branch\": { \"at\": \"discard\", \"when\": { \"wall\": [90, 60] },"
                  + " \"options\": [\"own-need\", \"safest\"], \"player\": \"watchful\" },"
                  + " \"primary\": \"points\""));

  @TempDir Path folder;

  private Study study(String name) {
    Cards.small(folder);
    String text =
        "{ \"study\": \"" + name + "\", \"card\": \"small.json\", \"seed\": 5, \"deals\": 50, ";
    String file = Cards.write(folder, name + ".json", text + STUDIES.get(name) + " }");
    return StudyFile.read(Path.of(file), Changes.NONE, Catalog.standard());
  }

  private String layout(String name) {
    Study study = study(name);
    TableSetup setup = new TableSetup(new ConcreteHands(study.card()), study.rules());
    return TallyLayout.of(new StudyTally(PlayedDesign.planOf(study), setup));
  }

  private static String shortDigest(String text) {
    String digest = Sha256.of(text.getBytes(StandardCharsets.UTF_8));
    return digest.substring(digest.indexOf(':') + 1, digest.indexOf(':') + 17);
  }

  private static List<String> pins() throws IOException {
    try (InputStream file = BlockLayoutTest.class.getResourceAsStream(PINS)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }

  @Test
  void layoutOfEveryDesign_isTheOnePinnedForThisFormat() throws IOException {
    String now =
        STUDIES.keySet().stream()
            .sorted()
            .map(name -> name + " " + shortDigest(layout(name)))
            .collect(Collectors.joining(", "));
    List<String> pins = pins();
    assertThat(pins.get(pins.size() - 1))
        .as("what blocks hold has changed: raise Checkpoint.FORMAT, add the line to " + PINS)
        .isEqualTo(Checkpoint.FORMAT + ": " + now);
  }

  /** A layout that comes back under a new number would be an error of whoever wrote the line. */
  @Test
  void pinnedFormats_areNumberedUpwardsAndUnlike() throws IOException {
    List<String> pins = pins();
    assertThat(pins).extracting(pin -> Integer.parseInt(pin.split(":")[0])).isSorted();
    assertThat(pins).extracting(pin -> pin.split(":")[0]).doesNotHaveDuplicates();
    assertThat(pins).extracting(pin -> pin.split(":", 2)[1]).doesNotHaveDuplicates();
  }

  @Test
  void everyDesign_isPinned() {
    assertThat(STUDIES.keySet()).containsExactlyInAnyOrderElementsOf(StudyFile.designs());
  }

  /** The digest hangs on names, numbers and order, all of which stand in the description. */
  @Test
  void description_ofATable_namesEveryPart() {
    assertThat(layout("table"))
        .startsWith("ways of playing\n  1 x counts WON_ON_OWN_DRAW WON_ON_DISCARD ")
        .contains("  4 x sum\n", " x array of 6\n")
        .endsWith("comparisons\nhabits\ntables\ndeals and games\n  2 x number\n");
    assertThat(layout("arms")).contains("comparisons\n").isNotEqualTo(layout("table"));
  }
}
