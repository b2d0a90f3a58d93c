package org.tallywall.experiments.invent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.tile.TileSet;

/** Drawn cards are good cards of the size and mixture that is promised. */
@Tag("one-jdk")
class CardInventorTest {

  @ParameterizedTest
  @ValueSource(ints = {50, 51, 52, 53, 54, 55, 56})
  void card_full_hasTheSizesOfPlayedCards(int lines) {
    for (long seed = 0; seed < 2; seed++) {
      Card card = draw(seed, lines);
      int hands = card.lines().stream().mapToInt(line -> line.hands().size()).sum();
      double concealed = card.lines().stream().filter(Line::concealed).count() / (double) lines;

      assertThat(card.lines()).hasSize(lines);
      assertThat(card.families()).hasSize(11);
      assertThat(hands).isBetween(900, 1600);
      assertThat(concealed).isBetween(0.15, 0.20);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {10, 12, 13, 14, 15, 20, 21, 30, 54, 70})
  void card_anySize_isGoodAndSharesNoHand(int lines) {
    CardReading reading = CardFile.json("drawn", new CardInventor(7, lines).draw("Any").text());

    assertThat(reading.faults()).isEmpty();
    assertThat(reading.warnings())
        .allMatch(warning -> warning.message().contains("in any case"))
        .hasSize((int) reading.card().lines().stream().filter(Line::crowded).count());
    Set<ConcreteHand> seen = new HashSet<>();
    for (Line line : reading.card().lines()) {
      assertThat(line.value()).isBetween(25, 75).matches(value -> value % 5 == 0);
      for (ConcreteHand hand : line.hands()) {
        assertThat(seen.add(hand)).as(hand.toString()).isTrue();
        assertThat(hand.canBeMade(TileSet.USUAL, true)).as(hand.toString()).isTrue();
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {12, 13, 14, 15})
  void card_forBeginners_isPlain(int lines) {
    for (long seed = 0; seed < 10; seed++) {
      Card card = draw(seed, lines);

      assertThat(card.lines().stream().filter(Line::concealed).count()).isLessThanOrEqualTo(3);
      for (Line line : card.lines()) {
        assertThat(line.printed().tiles()).as(line.id()).hasSize(1);
        assertThat(line.printed().where().letters()).as(line.id()).isEmpty();
        assertThat(line.hands().get(0).jokersNeeded(TileSet.USUAL)).as(line.id()).isZero();
      }
    }
  }

  @Test
  void card_pairsOnly_isConcealed() {
    for (Line line : draw(3, 54).lines()) {
      if (!line.hasLargeGroup()) {
        assertThat(line.concealed()).as(line.id()).isTrue();
      }
    }
  }

  @Test
  void card_sameSeed_isTheSameTextAndAnotherSeedIsNot() {
    String text = new CardInventor(5, 30).draw("Same").text();

    assertThat(new CardInventor(5, 30).draw("Same").text()).isEqualTo(text);
    assertThat(new CardInventor(6, 30).draw("Same").text()).isNotEqualTo(text);
    assertThat(text)
        .contains("tallywall card invent --lines 30 --seed 5 --name \"Same\"", "is chance");
  }

  @Test
  void card_nameWithQuotesAndLineBreak_staysOneCard() {
    String name = "The \"old\"\npier \\ card";

    assertThat(new CardInventor(5, 12).draw(name).card().name()).isEqualTo(name);
  }

  @Test
  void lines_tooFewOrTooMany_areRefused() {
    assertThatThrownBy(() -> new CardInventor(1, 9)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CardInventor(1, 71)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void shares_everyNumberOfLines_addUpWithNoFamilyLeftOut() {
    for (int lines = 21; lines <= 70; lines++) {
      List<Integer> shares = FamilyPlan.shares(lines, Level.FULL);

      assertThat(shares.stream().mapToInt(share -> share).sum()).isEqualTo(lines);
      assertThat(shares).allMatch(share -> share >= 1);
    }
  }

  private static Card draw(long seed, int lines) {
    return new CardInventor(seed, lines).draw("Test").card();
  }
}
