package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever names one file where another is wanted is told what it is and what to type. */
class MixedUpTest {
  @TempDir Path folder;

  private static String complaint(String... words) {
    Typed typed = Typed.run(words);
    assertThat(typed.code()).isEqualTo(Program.WRONG_INPUT);
    assertThat(typed.out()).isEmpty();
    assertThat(typed.err().lines()).hasSize(1);
    return typed.err();
  }

  @Test
  void card_whereAStudyIsWanted_isNamed() {
    String card = Cards.small(folder);

    assertThat(complaint("run", card))
        .contains(card + "\" is a card, not a study", "tallywall study new table --card " + card);
  }

  @Test
  void rules_whereAStudyIsWanted_areNamed() {
    String rules = Cards.write(folder, "rules.json", "{ \"wall.cold\": \"OFF\" }");

    assertThat(complaint("run", rules)).contains("holds table rules", "add --rules " + rules);
  }

  @Test
  void study_whereACardIsWanted_isNamed() {
    assertThat(complaint("rack", "studies/first-look.json", "FF"))
        .contains("is a study, not a card", "tallywall run studies/first-look.json");
    assertThat(complaint("ask", "x.txt", "--card", "studies/first-look.json"))
        .contains("is a study, not a card");
  }

  @Test
  void rackAndCard_theWrongWayRound_areTurned() {
    String card = Cards.small(folder);

    assertThat(complaint("rack", "113b 99d S", card))
        .contains("the card comes first; try: tallywall rack " + card + " \"113b 99d S\"");
  }
}
