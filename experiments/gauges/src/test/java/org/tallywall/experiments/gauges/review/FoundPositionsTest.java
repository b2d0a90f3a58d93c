package org.tallywall.experiments.gauges.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** A game gives one sheet, the same whenever it is asked for, of a question that fits. */
class FoundPositionsTest {
  private static final int DEALS = 20;

  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("../cards/saltmarsh-quay.json")).orThrow()),
          TableRules.STANDARD);

  private static FoundPositions turns() {
    PlayerSpec nearest = new PlayerSpec(Catalog.standard().type("nearest").orElseThrow(), Map.of());
    return new FoundPositions(SETUP, nearest::make, 7, moment -> moment instanceof Moment.Turn);
  }

  @Test
  void positions_areTurnsFromAnywhereInTheGame() {
    Set<Integer> walls = new HashSet<>();
    for (int deal = 0; deal < DEALS; deal++) {
      PositionSheet sheet = PositionSheet.of("deal " + deal, turns().of(deal), SETUP);
      assertThat(sheet.moment()).isInstanceOf(Moment.Turn.class);
      assertThat(sheet.view().complete()).isFalse();
      walls.add(sheet.view().wallLeft() / 20);
    }
    assertThat(walls).as("early, in the middle, late").hasSizeGreaterThan(2);
  }

  @Test
  void position_ofADealIsAlwaysTheSame() {
    FoundPositions positions = turns();
    String third = positions.of(3);
    assertThat(positions.of(4)).isNotEqualTo(third);
    assertThat(positions.of(3)).isEqualTo(third);
  }
}
