package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.setting.SettingValues;

/** Which choices South tries out, with 60 tiles left in the wall. */
class CandidatesTest {
  private static final ConcreteHands HANDS =
      TestTable.card(
          "{ \"tiles\": \"NNNN 111b 222c 3333d\", \"value\": 25 }",
          "{ \"tiles\": \"EEEE RRR 666b 8888c\", \"value\": 25 }");
  private static final int E = TileText.tile("E");
  private static final WorthTrying USUAL = new WorthTrying(3, 84);

  private static Candidates candidates(WorthTrying worth, double share) {
    return new Candidates(SettingValues.standard(HabitPlayer.watchful()), worth, 3, share);
  }

  private static HandMadeView oneAway() {
    return new HandMadeView(HANDS, "NNNN 111b 222c 33d E 9b");
  }

  @Test
  void discards_areThoseThatLeaveTheHandMostOfItsWorth() {
    assertThat(candidates(USUAL, 0.75).discards(oneAway(), E))
        .containsExactly(TurnChoice.discard(E), TurnChoice.discard(TileText.tile("9b")));
  }

  @Test
  void discards_withoutAShareAreAsManyAsMayBe() {
    assertThat(candidates(USUAL, 0).discards(oneAway(), E)).hasSize(3);
  }

  /** East shows RRR 666b and wants 8888c EEEE: an E could only be a present. */
  @Test
  void discardThatTheDefenseKeeps_isNotTried() {
    HandMadeView view = oneAway().exposed(0, "RRR 666b");
    assertThat(candidates(USUAL, 0.75).discards(view, TileText.tile("9b")))
        .containsExactly(TurnChoice.discard(TileText.tile("9b")), TurnChoice.discard(E));
    HandMadeView further =
        new HandMadeView(HANDS, "NNN 11b 222c 333d E 9b G").exposed(0, "RRR 666b");
    assertThat(candidates(USUAL, 0.75).discards(further, TileText.tile("9b")))
        .contains(TurnChoice.discard(TileText.tile("G")))
        .doesNotContain(TurnChoice.discard(E));
  }

  @Test
  void farFromAHandOrEarly_onlyTheUsualIsLeft() {
    assertThat(candidates(new WorthTrying(1, 84), 0.75).discards(oneAway(), E)).hasSize(1);
    assertThat(candidates(new WorthTrying(3, 59), 0.75).discards(oneAway(), E)).hasSize(1);
  }

  @Test
  void claims_areTheUsualAnswerNoneAndWhatTheTileMakes() {
    HandMadeView view = new HandMadeView(HANDS, "NNNN 111b 22c 33d E 9b").offered("2c");
    List<ClaimChoice> tried = candidates(USUAL, 0.75).claims(view, ClaimChoice.nothing());
    assertThat(tried).containsExactly(ClaimChoice.nothing(), ClaimChoice.expose(3, 0));
    assertThat(candidates(USUAL, 0.75).claims(view, ClaimChoice.expose(3, 0)))
        .containsExactly(ClaimChoice.expose(3, 0), ClaimChoice.nothing());
    HandMadeView unwanted = new HandMadeView(HANDS, "NNNN 111b 22c 33d E 9b").offered("W");
    assertThat(candidates(USUAL, 0.75).claims(unwanted, ClaimChoice.nothing())).hasSize(1);
  }
}
