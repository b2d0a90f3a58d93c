package org.tallywall.experiments.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.rules.RuleMeanings;
import org.tallywall.core.rules.RuleSwitches;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.study.RulesFile;

/** The file of table rules to edit is read as it stands, and every switch is in it. */
class RulesFormTest {
  @TempDir Path folder;

  private TableRules read(String text) throws IOException {
    return RulesFile.read(Files.writeString(folder.resolve("rules.json"), text));
  }

  @Test
  void form_readBack_isTheUsualRules() throws IOException {
    assertThat(read(RulesForm.text())).isEqualTo(TableRules.STANDARD);
  }

  @Test
  void form_everySwitch_standsThereOnceWithItsMeaning() {
    assertThat(RulesForm.text().lines().filter(line -> line.matches("  \"[^\"]+\": .+")))
        .hasSize(RuleSwitches.all().size());
    String words = RulesForm.text().replaceAll("\\s+//\\s+", " ");
    assertThat(RuleMeanings.all())
        .allSatisfy(meaning -> assertThat(words).contains(meaning.sentence(), meaning.key()));
  }

  @Test
  void form_edited_changesTheRules() throws IOException {
    TableRules cold = read("{ \"wall.cold\": \"NO_CLAIM\" }");
    String edited =
        RulesForm.text().replace("\"wall.cold\": \"OFF\"", "\"wall.cold\": \"NO_CLAIM\"");

    assertThat(read(edited)).isEqualTo(cold).isNotEqualTo(TableRules.STANDARD);
  }

  @Test
  void form_lines_fitAnEditor() {
    assertThat(RulesForm.text().lines()).allMatch(line -> line.length() <= 100);
  }
}
