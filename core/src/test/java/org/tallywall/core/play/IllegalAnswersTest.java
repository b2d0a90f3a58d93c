package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;

/** Whatever a player answers, the engine refuses what is not legal, and says who answered it. */
class IllegalAnswersTest {
  private static void refused(StackedGame game, int seat, String message) {
    IllegalMoveException refused = catchThrowableOfType(IllegalMoveException.class, game::run);
    assertThat(refused).hasMessageContaining(message);
    assertThat(refused.seat()).isEqualTo(seat);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 36, 1000})
  void discardOfNoTile_isRefused(int tile) {
    StackedGame game = StackedGame.play();
    game.seat(0).turn(new TurnChoice.Discard(tile));
    refused(game, 0, "the rack holds no tile number " + tile + " to discard (rule 3.2)");
  }

  @Test
  void discardOfATileNotHeld_isRefused() {
    StackedGame game = StackedGame.play().rack(1, "W");
    game.seat(0).discard("W");
    refused(game, 0, "the rack holds no W to discard (rule 3.2)");
  }

  @ParameterizedTest
  @CsvSource({"-1, 0", "4, 0", "1, -1", "1, 0", "0, 3"})
  void exchangeWithNothing_isRefused(int owner, int exposure) {
    StackedGame game = StackedGame.play();
    game.seat(0).turn(new TurnChoice.Exchange(owner, exposure));
    refused(game, 0, "no joker may be redeemed");
  }

  @Test
  void mahjongWithoutAHand_isRefused() {
    StackedGame game = StackedGame.play();
    game.seat(0).turn(TurnChoice.mahjong());
    refused(game, 0, "the 14 tiles are not a hand of the card");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 99})
  void mahjongOnALineThatIsNotMade_isRefused(int line) {
    StackedGame game = StackedGame.play().rack(0, "111b 4444c NNNN RRR");
    game.seat(0).turn(new TurnChoice.Mahjong(line));
    refused(game, 0, "or not of that line");
  }

  @ParameterizedTest
  @CsvSource({"-1, 2, 0", "-1, 7, 0", "-1, 4, -1", "-1, 4, 4", "12, 4, 4", "99, 4, 0", "13, 4, 0"})
  void claimOfNoGroup_isRefused(int kind, int size, int jokers) {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "444c");
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", new ClaimChoice.Expose(kind, size, jokers));
    refused(game, 2, "4c may not be claimed for " + size + " tiles");
  }

  @Test
  void mahjongClaimWithoutAHand_isRefused() {
    StackedGame game = StackedGame.play().rack(0, "4c").rack(2, "444c");
    game.seat(0).discard("4c");
    game.seat(2).claim("4c", ClaimChoice.mahjong());
    refused(game, 2, "the 14 tiles are not a hand of the card");
  }

  @Test
  void passOfTooManyOrUnevenTiles_isRefused() {
    StackedGame four = StackedGame.withPasses().rack(3, "NNNN");
    four.seat(3).pass(PassStep.RIGHT_1, "NNNN");
    refused(four, 3, "a pass is three tiles");
    StackedGame twice = StackedGame.withPasses().rack(3, "N");
    twice.seat(3).pass(PassStep.RIGHT_1, "NNN");
    refused(twice, 3, "the rack holds 1 of N");
  }

  @Test
  void answersOfNothing_areRefused() {
    for (String question : List.of("pass", "courtesy", "claim", "turn")) {
      List<Player> players =
          List.of(new Silent(question), new Silent(""), new Silent(""), new Silent(""));
      Game game =
          new Game(
              new TableSetup(new ConcreteHands(MixedTable.card()), TableRules.STANDARD),
              players,
              GameListener.NONE);
      assertThatThrownBy(
              () -> {
                for (int deal = 0; deal < 200; deal++) {
                  game.play(Deal.of(5, deal, TileSet.USUAL));
                }
              })
          .as(question)
          .isInstanceOf(IllegalMoveException.class);
      assertThat(game.lastAsked()).isZero();
    }
  }

  /** Plays by lot, but to one kind of question has nothing to say. */
  private static final class Silent implements Player {
    private final String question;
    private final AnyMove rest = new AnyMove();

    Silent(String question) {
      this.question = question;
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return false;
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return question.equals("pass") ? null : rest.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return true;
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return 2;
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return question.equals("courtesy") ? null : rest.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return question.equals("claim") ? null : rest.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      return question.equals("turn") ? null : rest.turn(view, random);
    }
  }

  @Test
  void threePlayers_areRefused() {
    TableSetup setup = new TableSetup(new ConcreteHands(MixedTable.card()), TableRules.STANDARD);
    assertThatThrownBy(
            () ->
                new Game(
                    setup, List.of(new AnyMove(), new AnyMove(), new AnyMove()), GameListener.NONE))
        .hasMessageContaining("four players sit at a table, not 3");
  }

  @Test
  void wallOfAnotherSet_isRefused() {
    TableSetup setup = new TableSetup(new ConcreteHands(MixedTable.card()), TableRules.STANDARD);
    Game game = new Game(setup, MixedTable.players(0), GameListener.NONE);
    assertThatThrownBy(() -> game.play(Deal.of(1, 1, new TileSet(8, 10))))
        .hasMessageContaining("the wall has 154 tiles, the rules 152");
  }
}
