package org.tallywall.experiments.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.ask.SceneAnswers;
import org.tallywall.strategies.catalog.Catalog;

/** A sheet to fill in is a good one as it stands, and so is every line of it that is a comment. */
class SheetToFillTest {
  private static final TableRules FEWER_TILES =
      TableRules.of(Map.of("tiles.flowers", 4, "tiles.jokers", 0));

  private static TableSetup table(TableRules rules) {
    return new TableSetup(
        new ConcreteHands(CardFile.read(Path.of("cards", "saltmarsh-quay.json")).orThrow()), rules);
  }

  @ParameterizedTest
  @EnumSource
  void text_asItStands_isAPositionThatAPlayerAnswers(SheetToFill sheet) {
    for (TableRules rules : List.of(TableRules.STANDARD, FEWER_TILES)) {
      PositionSheet read = PositionSheet.of("mine", sheet.text(), table(rules));
      SceneAnswers answers =
          SceneAnswers.of(read, Catalog.standard().type("reckoner").orElseThrow().maker(), 1);
      assertThat(answers.counts()).hasSize(1);
    }
    assertThat(sheet.text()).doesNotContain("@").endsWith("words.\n");
    assertThat(sheet.text().lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void kinds_areThoseOfMoments() {
    Set<Class<?>> asked = new HashSet<>();
    for (String kind : SheetToFill.kinds()) {
      Moment moment =
          PositionSheet.of("mine", SheetToFill.of(kind).text(), table(TableRules.STANDARD))
              .moment();
      asked.add(moment.getClass());
    }
    assertThat(asked).containsExactlyInAnyOrder(Moment.class.getPermittedSubclasses());
  }

  /** By rules that allow the exposure on any card. */
  @ParameterizedTest
  @EnumSource
  void lines_switchedOn_areGoodOnes(SheetToFill sheet) {
    String text = sheet.text().replaceAll("(?m)^//(?! )", "");
    TableRules lenient = TableRules.of(Map.of("claims.lineFit", "LENIENT"));

    PositionSheet read = PositionSheet.of("mine", text, table(lenient));
    assertThat(text).isNotEqualTo(sheet.text());
    assertThat(read.expect()).hasSize(1);
    assertThat(read.never()).hasSize(1);
    assertThat(read.plays().get(0)).isEqualTo("watchful");
    assertThat(read.because()).startsWith("Your reason");
    assertThat(read.view().passes()).hasSize(2);
    assertThat(read.view().lostClaims()).hasSize(read.moment().inPlay() ? 1 : 0);
  }

  @Test
  void unknownKind_isToldWhatThereIs() {
    assertThatThrownBy(() -> SheetToFill.of("trun"))
        .hasMessage(
            "there is no question \"trun\"; did you mean \"turn\"? (questions: pass, stop,"
                + " courtesy-ask, courtesy-give, turn, offer)");
  }
}
