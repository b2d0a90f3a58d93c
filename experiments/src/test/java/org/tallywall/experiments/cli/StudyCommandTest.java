package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.experiments.guide.StudySkeleton;

/** A study to fill in runs as it stands, on the card of the demo and on one's own. */
class StudyCommandTest {
  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource
  void newStudy_asItStands_runs(StudySkeleton skeleton) {
    Path study = folder.resolve("first-try.json");
    Typed made = Typed.run("study", "new", skeleton.kind(), "--out", study.toString());
    assertThat(made.err()).isEmpty();
    assertThat(made.out()).startsWith("Wrote " + study + "\n").contains("tallywall run " + study);

    Path out = folder.resolve("out");
    Typed run = Typed.run("run", study.toString(), "--deals", "6", "--out", out.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    assertThat(out.resolve("report.html")).exists();

    Typed dry = Typed.run("run", study.toString(), "--dry-run", "--deals", "2");
    assertThat(dry.code()).isZero();
    assertThat(dry.out()).startsWith("first-try: ").endsWith("Nothing was written.\n");
  }

  @Test
  void newStudy_onOnesOwnCard_seesItFromItsOwnFolder() throws IOException {
    String card = Cards.small(folder);
    Path study = Files.createDirectory(folder.resolve("studies")).resolve("Meine.json");

    Typed made = Typed.run("study", "new", "table", "--card", card, "--out", study.toString());

    assertThat(made.code()).isZero();
    assertThat(Files.readString(study))
        .contains("\"card\": \"" + card + "\"", "\"study\": \"my-study\"");
    assertThat(Typed.run("run", study.toString(), "--dry-run", "--deals", "2").code()).isZero();
  }

  @Test
  void newStudy_toTheScreen_isTheFileAlone() {
    Typed typed = Typed.run("study", "new", "arms");

    assertThat(typed.err()).isEmpty();
    assertThat(typed.out())
        .isEqualTo(StudySkeleton.ARMS.text("my-study", "cards/saltmarsh-quay.json"));
  }

  @Test
  void newStudy_withoutAKind_listsThem() {
    Typed typed = Typed.run("study", "new");

    assertThat(typed.code()).isZero();
    for (StudySkeleton skeleton : StudySkeleton.values()) {
      assertThat(typed.out()).contains(skeleton.kind() + "\n    " + skeleton.asks());
    }
  }

  @Test
  void newStudy_wrongWords_areAnswered() throws IOException {
    String there = Cards.write(folder, "there.json", "mine");

    assertThat(Typed.run("study", "new", "arm").err()).contains("did you mean \"arms\"?");
    assertThat(Typed.run("study", "new", "arms", "--out", there).err()).contains("exists already");
    assertThat(Files.readString(Path.of(there))).isEqualTo("mine");
    assertThat(Typed.run("study", "new", "arms", "--card", there).code())
        .isEqualTo(Program.WRONG_INPUT);
    assertThat(Typed.run("study").err()).contains("new, list");
  }

  @Test
  void list_everyStudyOfTheProject_hasItsQuestion() throws IOException {
    Typed typed = Typed.run("study", "list");

    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .contains("studies/first-look.json\n    How often does each seat win")
        .doesNotContain("no question");
    assertThat(typed.out().lines().filter(line -> line.startsWith("studies/")))
        .hasSize(StudiesOfTheProjectTest.studies().size() + 1);
  }
}
