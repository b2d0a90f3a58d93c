package org.tallywall.experiments.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.reason.Reason;

/** Every reason of the list in words, with its numbers. */
class ReasonWordsTest {
  private static final Card CARD =
      CardFile.json(
              "one.json",
              """
              { "card": "One line", "families": [ { "family": "Ladders", "lines": [
                { "id": "L1", "tiles": "222b 333b 4444b 55b FF", "value": 30 } ] } ] }
              """)
          .orThrow();
  private static final int EIGHT = TileText.tile("8c");

  private final ReasonWords words = new ReasonWords(CARD, SeatNames.FROM_EAST, new TypedTiles());

  private record Case(Reason reason, String text) {}

  private static final List<Case> CASES =
      List.of(
          new Case(new Reason.Aim(0, 5), "heads for L1, 9 of 14 (5 away)"),
          new Case(new Reason.Complete(0, 30), "complete: L1, worth 30"),
          new Case(new Reason.Unneeded(5), "nothing lost by it, still 5 away"),
          new Case(new Reason.Costs(5, 6), "it costs: 5 away becomes 6"),
          new Case(new Reason.Nearer(2, 1), "nearer: 2 away becomes 1"),
          new Case(
              new Reason.NothingNearer(2, 3), "nothing nearer: 2 away as it is, 3 with a claim"),
          new Case(
              new Reason.WouldBring(3, 2), "left although nearer: 3 away as it is, 2 with a claim"),
          new Case(new Reason.Concealed(0), "L1 must stay concealed"),
          new Case(new Reason.ToSpare(0), "no tile beside the hand in mind"),
          new Case(new Reason.ToSpare(1), "1 tile beside the hand in mind"),
          new Case(new Reason.Blind(2), "2 tiles go on unseen"),
          new Case(new Reason.JokersKept(0), "no joker stays back"),
          new Case(new Reason.JokersKept(1), "1 joker kept back"),
          new Case(
              new Reason.Redeems(EIGHT, 0, 2),
              "8c buys a joker from East, which makes 2 jokers on the rack"),
          new Case(
              new Reason.Dead(0, EIGHT, 3), "a hand of L1 that wants it is dead: 3 of 8c in view"),
          new Case(new Reason.HerTile(3, 2), "left of East can want it, with 2 lines left to her"),
          new Case(new Reason.NotHers(0, 0), "East cannot want it, with no line left to her"),
          new Case(new Reason.LastOfItsKind(3), "the last of its kind, the other 3 are out"),
          new Case(new Reason.JustWentRound(EIGHT), "8c has just gone round"),
          new Case(new Reason.NobodyTakesIt(), "nobody can take a joker"),
          new Case(
              new Reason.Step(Stance.TO_THE_WALL, 4, 1, 3),
              "to the wall: 4 away, 1 draw left, at most 3 exposures on one rack"),
          new Case(
              new Reason.Step(Stance.HOLD_BACK, 99, 9, 1),
              "hold back: every line is dead, 9 draws left, at most 1 exposure on one rack"));

  @Test
  void reasons_inWords_sayTheirNumbers() {
    for (Case one : CASES) {
      assertThat(words.text(one.reason())).isEqualTo(one.text());
    }
  }

  @Test
  void reasons_ofTheWholeList_areTried() {
    Set<Class<?>> tried =
        CASES.stream().map(one -> one.reason().getClass()).collect(Collectors.toSet());

    assertThat(tried)
        .containsExactlyInAnyOrderElementsOf(Arrays.asList(Reason.class.getPermittedSubclasses()));
  }

  @Test
  void severalReasons_standInOneLine() {
    assertThat(words.text(List.of(new Reason.ToSpare(1), new Reason.Aim(0, 2))))
        .isEqualTo("1 tile beside the hand in mind; heads for L1, 12 of 14 (2 away)");
  }
}
