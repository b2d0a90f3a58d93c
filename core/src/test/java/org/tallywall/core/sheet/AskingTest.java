package org.tallywall.core.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.ScriptedPlayer;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** The question is put on until the player has thrown a tile, and the view moves along. */
class AskingTest {
  private static final String OFFER =
      """
      seat 1
      moment offer 8c from 0
      wall 95
      rack 222b 66c 88c 66d FF EJ
      exposed 2 NNNJ
      discards 1b 2c 3d 4d
      """;
  private static final int E = TileText.tile("E");

  private final ScriptedPlayer player = new ScriptedPlayer();
  private final List<String> heard = new ArrayList<>();

  private List<Move> ask(String text) {
    return Asking.put(
        Sheets.read(text),
        player,
        7,
        (view, move) -> heard.add(view.rackSize() + " " + move.text()));
  }

  @Test
  void exchangeThenDiscard_isAskedInTwoQuestions() {
    player.turn(TurnChoice.exchange(2, 0), TurnChoice.discard(Tile.JOKER));
    String text =
        Sheets.turnWith("rack", "rack 222b 66c 888c 66d FF E N").replace("turn drew S", "turn");

    assertThat(ask(text))
        .containsExactly(new Move.Exchange(TileText.tile("N"), 2), new Move.Discard(Tile.JOKER));
    assertThat(heard).containsExactly("14 exchange N seat 2", "14 discard J");
    assertThat(player.asked).containsExactly("turn", "turn");
  }

  @Test
  void claim_isGrantedAndTheTurnGoesOn() {
    player.claim("8c", ClaimChoice.expose(4, 1)).turn(TurnChoice.discard(E));
    String text = OFFER;

    assertThat(ask(text)).containsExactly(new Move.Claim(4, 1), new Move.Discard(E));
    assertThat(heard).containsExactly("13 claim 4 jokers 1", "10 discard E");
  }

  @Test
  void view_afterAClaim_hasTheGroupAndNoOffer() {
    SheetView view = Sheets.read(OFFER).view();
    view.claim(TileText.tile("8c"), 4, 1);

    assertThat(view.exposures(1)).isEqualTo(TileText.exposures("888cJ"));
    assertThat(view.offered()).isEqualTo(-1);
    assertThat(view.discards()).isZero();
    assertThat(view.discarded(TileText.tile("8c"))).isZero();
    assertThat(view.faceUp(TileText.tile("8c"))).isEqualTo(3);
    assertThat(view.faceUp(Tile.JOKER)).isEqualTo(2);
    assertThat(view.claimedThisTurn()).isTrue();
    assertThat(view.drawn()).isEqualTo(-1);
  }

  @Test
  void view_afterAnExchange_hasTheJoker() {
    SheetView view = Sheets.read(Sheets.turnWith("rack", "rack 222b 66c 888c 66d FF S N")).view();
    long before = view.events();
    view.exchange(2, 0);

    assertThat(view.exposures(2)).isEqualTo(TileText.exposures("NNNN"));
    assertThat(view.held(Tile.JOKER)).isEqualTo(1);
    assertThat(view.held(Tile.NORTH)).isZero();
    assertThat(view.faceUp(Tile.JOKER)).isZero();
    assertThat(view.exchangesThisTurn()).isEqualTo(1);
    assertThat(view.exchanges()).hasSize(1);
    assertThat(view.events()).isGreaterThan(before);
  }

  @Test
  void offer_thatCannotBeClaimed_isNotAsked() {
    String text = OFFER.replace("offer 8c", "offer 5c");

    assertThat(ask(text)).containsExactly(new Move.Nothing());
    assertThat(player.asked).isEmpty();
  }

  @Test
  void passes_areAskedOnce() {
    player.pass(PassStep.LEFT_1, "66c");
    String rack = "seat 1\nrack 222b 66c 88c 66d FF E 3b\n";

    assertThat(ask(rack + "moment pass left-1"))
        .containsExactly(new Move.Pass(List.of(TileText.tile("6c"), TileText.tile("6c")), 1));
    assertThat(ask(rack + "moment stop")).containsExactly(new Move.Stop(false));
    assertThat(ask(rack + "moment courtesy ask")).containsExactly(new Move.Courtesy(0));
    assertThat(ask(rack + "moment courtesy give 2")).hasSize(1);
  }

  @Test
  void illegalAnswer_isRefused() {
    player.turn(TurnChoice.discard(TileText.tile("9d")));

    assertThatThrownBy(() -> ask(Sheets.TURN))
        .isInstanceOf(IllegalMoveException.class)
        .hasMessage("a discard that is not legal");
  }

  @Test
  void illegalPass_isRefused() {
    player.pass(PassStep.RIGHT_1, "66c");

    assertThatThrownBy(() -> ask("seat 1\nrack 222b 66c 88c 66d FF E 3b\nmoment pass right-1"))
        .hasMessage("a pass that is not legal");
  }
}
