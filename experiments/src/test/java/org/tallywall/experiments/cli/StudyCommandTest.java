package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.experiments.guide.SectionsStudy;
import org.tallywall.experiments.guide.StudySkeleton;

/** A study to fill in runs as it stands, on the card of the demo and on one's own. */
@Tag("one-jdk")
class StudyCommandTest {
  @TempDir Path folder;

  @ParameterizedTest
  @Tag("long")
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
  }

  /** Each plays for three seconds by the clock. */
  @ParameterizedTest
  @EnumSource
  @Tag("long")
  void newStudy_asItStands_canBeTriedWithoutWriting(StudySkeleton skeleton) {
    Path study = folder.resolve("first-try.json");
    Typed.run("study", "new", skeleton.kind(), "--out", study.toString());

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
    Path out = folder.resolve("out");
    Typed run =
        Typed.run(
            "run", study.toString(), "--deals", "2", "--out", out.toString(), "--without-report");
    assertThat(run.code()).as(run.err()).isZero();
  }

  @Test
  void newStudyOfSections_onOnesOwnCard_hasAWayForEachFamily_andRuns() throws IOException {
    String odd = "=\\u202e@ASKS@ \\\"x\\\"";
    String card =
        Cards.write(
            folder,
            "mine.json",
            Cards.SMALL.replace("\"Ladders\"", "\"" + odd + "\"").replace("Vanes", "family 1"));
    Path study = folder.resolve("my-sections.json");

    Typed made = Typed.run("study", "new", "sections", "--card", card, "--out", study.toString());

    assertThat(made.err()).isEmpty();
    assertThat(Files.readString(study))
        .contains("\"card\": \"" + card + "\"", "\"pursue Couples\"", "\"aim.prefer-family\"");
    Path out = folder.resolve("out");
    Typed run = Typed.run("run", study.toString(), "--deals", "4", "--out", out.toString());
    assertThat(run.err()).isEmpty();
    assertThat(run.code()).isZero();
    int families = CardFile.read(Path.of(card)).orThrow().families().size();
    assertThat(families).isGreaterThan(2);
    assertThat(Files.readAllLines(out.resolve("ways.csv"))).hasSize(1 + families);
  }

  @Test
  void newStudyOfSections_everyField_hasACommentBeforeIt() {
    String before = "";
    Typed typed = Typed.run("study", "new", "sections");
    assertThat(typed.out()).doesNotContain("@").contains(SectionsStudy.ASKS);
    for (String line : typed.out().lines().toList()) {
      if (line.startsWith("  \"")) {
        assertThat(before).as(line).startsWith("  //");
      }
      before = line;
    }
  }

  /** One sentence says it, and the command in it makes the study that was wanted. */
  @Test
  void studyOfAnotherCardsSections_namesTheCommandThatMakesOneOfThisCard() {
    String[] words = {
      "run", "studies/which-section-first.json", "--card", "cards/pebble-cove.json", "--dry-run"
    };
    Typed typed = Typed.run(words);

    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.err())
        .hasLineCount(1)
        .contains("families that the card \"Pebble Cove card\" does not have (\"Ladders\", ")
        .contains("and 8 more)")
        .endsWith(
            "tallywall study new sections --card cards/pebble-cove.json --out my-sections.json\n");
  }

  /** In a study of this card, each name is looked at by itself: it may be mistyped. */
  @Test
  void studyWithAMistypedSection_namesTheNearest() throws IOException {
    String study =
        Cards.write(
            folder,
            "mine.json",
            Files.readString(Path.of("studies/which-section-first.json"))
                .replace("../cards/", Path.of("cards").toAbsolutePath() + "/")
                .replace("y\": \"Ladders\"", "y\": \"Laders\"")
                .replace("y\": \"Tens\"", "y\": \"Tenns\""));

    assertThat(Typed.run("run", study, "--dry-run").err())
        .hasLineCount(2)
        .contains("did you mean \"Ladders\"?", "did you mean \"Tens\"?");
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
    assertThat(typed.out()).contains("sections\n    " + SectionsStudy.ASKS);
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
        .hasSize(StudiesOfTheProjectTest.studies().size() + 2);
  }
}
