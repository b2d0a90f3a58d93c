package org.tallywall.experiments.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.habit.Objection;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.reason.Reason;

/** Every reason of the list in words, with its numbers. */
class ReasonWordsTest {
  private static final Card CARD =
      CardFile.json(
              "one.json",
              """
              { "card": "One line", "families": [ { "family": "Ladders", "lines": [
                { "id": "L1", "tiles": "222b 333b 4444b 55b FF", "value": 30,
                  "say": "the staircase" } ] } ] }
              """)
          .orThrow();
  private static final int EIGHT = TileText.tile("8c");

  private final ReasonWords words = new ReasonWords(CARD, SeatNames.FROM_EAST, new TypedTiles());

  private record Case(Reason reason, String text) {}

  private static final int NINE = TileText.tile("9d");

  private static Case rather(Reason.Cause cause, String text) {
    return new Case(new Reason.Rather(EIGHT, NINE, cause), "8c goes rather than 9d: " + text);
  }

  private static Case left(Objection objection, String text) {
    return new Case(new Reason.LeftClaim(4, 2, objection, 0.84, 21, 3), text);
  }

  private static final List<Case> CASES =
      List.of(
          new Case(
              new Reason.Aim(0, 0, 3, List.of(EIGHT, NINE, NINE), 0),
              "heading for L1 “the staircase”, 3 away (11 of 14): needs 8c 99d"),
          new Case(
              new Reason.Aim(0, 0, 1, List.of(NINE, NINE), 1),
              "heading for L1 “the staircase”, 1 away (13 of 14): needs 99d, one of them by joker"),
          new Case(
              new Reason.Aim(0, 0, 1, List.of(EIGHT, NINE, NINE), 2),
              "heading for L1 “the staircase”, 1 away (13 of 14): needs 8c 99d, 2 of them by jokers"),
          new Case(
              new Reason.Aim(0, 0, 0, List.of(), 0),
              "heading for L1 “the staircase”, 0 away (14 of 14)"),
          new Case(new Reason.Complete(0, 30), "complete: L1 “the staircase”, worth 30"),
          new Case(new Reason.Unneeded(5), "costs nothing: the nearest hand of all stays 5 away"),
          new Case(
              new Reason.Costs(5, 6),
              "costs a tile or more: the nearest hand of all goes from 5 to 6 away"),
          new Case(new Reason.Nearer(2, 1), "the nearest hand comes from 2 to 1 away"),
          new Case(
              new Reason.NothingNearer(2, 3),
              "a claim brings nothing nearer: the nearest hand is 2 away, 3 with it"),
          new Case(
              new Reason.WouldBring(3, 2), "a claim would bring the nearest hand from 3 to 2 away"),
          new Case(new Reason.Concealed(0), "L1 must stay concealed"),
          new Case(new Reason.ToSpare(0), "no tile the hand does not need"),
          new Case(new Reason.ToSpare(1), "1 tile the hand does not need"),
          new Case(new Reason.Blind(2), "passes on 2 tiles blind"),
          new Case(new Reason.JokersKept(0), "keeps no joker back"),
          new Case(new Reason.JokersKept(1), "keeps 1 joker back"),
          new Case(
              new Reason.Redeems(EIGHT, 0, 2),
              "8c buys a joker from East, which makes 2 jokers on the rack"),
          new Case(
              new Reason.Dead(0, EIGHT, 3), "a hand of L1 that wants it is dead: 3 of 8c in view"),
          new Case(new Reason.HerTile(3, 2), "left of East can want it, with 2 lines left to her"),
          new Case(new Reason.NotHers(0, 0), "East cannot want it, with no line left to her"),
          new Case(new Reason.NobodyWants(2), "nobody who shows an exposure can want it"),
          new Case(new Reason.LastOfItsKind(TileText.tile("6b"), 3), "the other three 6b are out"),
          new Case(new Reason.JustWentRound(EIGHT), "8c just went around"),
          new Case(new Reason.NobodyTakesIt(), "nobody can take a joker"),
          new Case(
              new Reason.Step(Stance.TO_THE_WALL, 4, 1, 3),
              "to the wall: the nearest hand is 4 away, 1 draw left, at most 3 exposures on one rack"),
          new Case(
              new Reason.Step(Stance.HOLD_BACK, 99, 9, 1),
              "holding back: every line is dead, 9 draws left, at most 1 exposure on one rack"),
          rather(new Reason.Cause.Needed(0), "L1 needs 9d, no hand in mind needs 8c"),
          rather(
              new Reason.Cause.KeepsMore(0.931, 0.25),
              "its rack keeps 93.1% of its worth without 8c, 25% without 9d"),
          rather(
              new Reason.Cause.Safer(0.004, 0.021),
              "it judges the risk that someone wins on it 0.4%, on 9d 2.1%"),
          rather(
              new Reason.Cause.MoreOut(2, 0),
              "neither matters more to the hand, and more of it are out (2 face up against 0)"),
          rather(new Reason.Cause.Either(), "one is as good as the other"),
          rather(new Reason.Cause.Otherwise(), "one of its habits decides, or it played both out"),
          left(Objection.NONE, "it overlooked that, or played it out and liked it less"),
          left(Objection.TOO_EARLY, "it does not claim this early"),
          left(Objection.TOO_FAR, "it does not claim from this far away"),
          left(Objection.UNWANTED, "no hand it has in mind wants the tile"),
          left(Objection.JOKERS, "that would show 2 jokers, more than it shows from this far away"),
          left(
              Objection.NOT_WORTH_IT,
              "by its own judgment that makes the rack worth 0.8 times as much, and leaves 3 of 21"
                  + " lines"),
          left(Objection.NOT_NEARER, "it asks more of a claim than that"),
          left(Objection.FEW_GROUPS, "it would have too few groups finished"),
          left(Objection.TELLS, "that tells too much: 3 of 21 lines would be left"),
          left(
              Objection.LEAVES_BADLY,
              "that would leave a wait for a pair, or a joker to be redeemed"),
          left(Objection.GIVEN_UP, "it has given the hand up"));

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
  void everyObjectionAndCause_isTried() {
    assertThat(CASES.stream().map(Case::reason).filter(Reason.LeftClaim.class::isInstance))
        .extracting(one -> ((Reason.LeftClaim) one).objection())
        .containsExactlyInAnyOrder(Objection.values());
    assertThat(CASES.stream().map(Case::reason).filter(Reason.Rather.class::isInstance))
        .extracting(one -> ((Reason.Rather) one).cause().getClass().getName())
        .containsExactlyInAnyOrderElementsOf(
            Arrays.stream(Reason.Cause.class.getPermittedSubclasses())
                .map(Class::getName)
                .toList());
  }

  @Test
  void severalReasons_standInOneLine_andAClaimLeftWithItsBut() {
    assertThat(
            words.text(
                List.of(
                    new Reason.ToSpare(1),
                    new Reason.WouldBring(3, 2),
                    new Reason.LeftClaim(3, 0, Objection.TOO_EARLY, 2, 4, 1))))
        .isEqualTo(
            "1 tile the hand does not need; a claim would bring the nearest hand from 3 to 2 away,"
                + " but it does not claim this early");
  }

  /** The figures behind a ranking, with their units. */
  @Test
  void choices_areRankedInPercentAndInTimes() {
    JudgmentWords judgment = new JudgmentWords(new TypedTiles(), line -> "L1");

    assertThat(
            List.of(
                judgment.ranked(new Weighed(new Move.Discard(NINE), 1, 0.0312, Objection.NONE)),
                judgment.ranked(
                    new Weighed(new Move.Discard(NINE), 0.5, Weighed.UNREAD, Objection.NONE)),
                judgment.ranked(new Weighed(new Move.Nothing(), 1, Weighed.UNREAD, Objection.NONE)),
                judgment.ranked(
                    new Weighed(new Move.Claim(4, 1), 2.26, Weighed.UNREAD, Objection.NONE)),
                judgment.ranked(
                    new Weighed(
                        new Move.Claim(3, 0), 1.1, Weighed.UNREAD, Objection.NOT_WORTH_IT))))
        .containsExactly(
            "discard 9d: keeps 100% of the rack's worth, 3.1% risk that someone wins on it",
            "discard 9d: keeps 50% of the rack's worth",
            "nothing: leaves the rack as it is",
            "claim 4 jokers 1: makes the rack worth 2.3 times as much",
            "claim 3 jokers 0: makes the rack worth 1.1 times as much, not enough for it");
    for (Objection objection : Objection.values()) {
      String text =
          judgment.ranked(new Weighed(new Move.Claim(3, 0), 1, Weighed.UNREAD, objection));
      assertThat(text.contains("as much, ")).isEqualTo(objection != Objection.NONE);
    }
  }
}
