package org.tallywall.experiments.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.experiments.design.branch.BranchMoment;
import org.tallywall.experiments.design.branch.BranchOption;
import org.tallywall.experiments.design.branch.Feature;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Measure;

/** There is a study to begin with for every design, with every field explained. */
class StudySkeletonTest {

  @Test
  void kinds_areTheDesignsOfStudies() {
    assertThat(Arrays.stream(StudySkeleton.values()).map(StudySkeleton::kind))
        .containsExactlyInAnyOrderElementsOf(StudyFile.designs());
  }

  @ParameterizedTest
  @EnumSource
  void text_everyField_hasACommentBeforeIt(StudySkeleton skeleton) {
    String text = skeleton.text("mine", "card.json");

    assertThat(text).doesNotContain("@").contains(skeleton.asks());
    String before = "";
    for (String line : text.lines().toList()) {
      if (line.startsWith("  \"")) {
        assertThat(before).as(line).startsWith("  //");
      }
      before = line;
    }
    assertThat(text.lines()).allMatch(line -> line.length() <= 100);
  }

  @ParameterizedTest
  @EnumSource
  void text_nameOfTheCard_standsThereWhateverItHolds(StudySkeleton skeleton) {
    String card = "my \"best\" \\ card.json";
    Node root = LocatedJson.read(skeleton.text("mine", card), new Faults());

    assertThat(((Node.Fields) root.value()).values().get("card").value()).isEqualTo(card);
  }

  @Test
  void measures_ofComparisons_areAllNamed() {
    String words = StudySkeleton.ARMS.text("mine", "card.json");

    assertThat(Measure.names()).allSatisfy(name -> assertThat(words).contains(name));
  }

  @Test
  void branch_everyDecisionAndEverySorting_isNamed() {
    String words = StudySkeleton.BRANCH.text("mine", "card.json");

    for (BranchMoment moment : BranchMoment.values()) {
      assertThat(words).containsPattern("\"" + moment.text() + "\"\\s+(// )?\\(");
    }
    for (Feature feature : Feature.values()) {
      assertThat(words).contains("\"" + feature.text() + "\"");
    }
    for (BranchOption option : BranchOption.values()) {
      assertThat(words).contains("\"" + option.text() + "\"");
    }
  }
}
