package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.sheet.SheetWriter;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;

/** A player who reads a sheet written from a game answers as it answered in the game. */
class SheetAnswersTest {
  private int asked;

  @ParameterizedTest
  @ValueSource(strings = {"nearest", "reckoner", "watchful"})
  void sheetOfAGame_isAnsweredAsInTheGame(String name) {
    play(name, 0, 5);
    assertThat(asked).isGreaterThan(200);
  }

  @ParameterizedTest
  @Tag("long")
  @ValueSource(strings = {"nearest", "reckoner", "watchful"})
  void sheetsOfManyGames_areAnsweredAsInTheGame(String name) {
    play(name, 5, 105);
    assertThat(asked).isGreaterThan(10_000);
  }

  private void play(String name, int from, int to) {
    for (int deal = from; deal < to; deal++) {
      TableRules rules = TestTable.rulesOf(deal);
      List<Player> players = new ArrayList<>();
      for (int seat = 0; seat < 4; seat++) {
        players.add(new Twice(maker(name), maker(name)));
      }
      new Game(new TableSetup(TestTable.HANDS, rules), players, GameListener.NONE)
          .play(Deal.of(TestTable.SEED, deal, rules.tiles()));
    }
  }

  private static Player maker(String name) {
    return Catalog.standard().type(name).orElseThrow().maker().get();
  }

  /** Answers in the game, and has another player of its kind answer the sheet. */
  private final class Twice extends ForwardingPlayer {
    private final Player reader;

    Twice(Player player, Player reader) {
      super(player);
      this.reader = reader;
    }

    private SeatView sheet(SeatView view, Moment moment) {
      asked++;
      String text = SheetWriter.text(view, moment);
      return PositionSheet.of("written", text, view.table()).view();
    }

    /** Numbers of which both who are asked get the same. */
    private static RandomStream same(RandomStream random) {
      return random.beside(Purpose.ROLLOUT, 0);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      PassChoice choice = reader.pass(sheet(view, new Moment.Pass(step)), step, same(random));
      assertThat(choice).isEqualTo(behind().pass(view, step, same(random)));
      return choice;
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      boolean stops = reader.stops(sheet(view, new Moment.Stop()), same(random));
      assertThat(stops).isEqualTo(behind().stops(view, same(random)));
      return stops;
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      int number = reader.courtesyNumber(sheet(view, new Moment.CourtesyAsk()), same(random));
      assertThat(number).isEqualTo(behind().courtesyNumber(view, same(random)));
      return number;
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      SeatView sheet = sheet(view, new Moment.CourtesyGive(number));
      int[] tiles = reader.courtesyTiles(sheet, number, same(random));
      assertThat(tiles).isEqualTo(behind().courtesyTiles(view, number, same(random)));
      return tiles;
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      SeatView sheet = sheet(view, new Moment.Offer(view.offered(), view.offeredBy()));
      ClaimChoice choice = reader.claim(sheet, same(random));
      assertThat(choice).isEqualTo(behind().claim(view, same(random)));
      return choice;
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      SeatView sheet = sheet(view, new Moment.Turn(view.drawn(), view.claimedThisTurn()));
      TurnChoice choice = reader.turn(sheet, same(random));
      assertThat(choice).isEqualTo(behind().turn(view, same(random)));
      assertThat(reader.aim(sheet)).isEqualTo(behind().aim(view));
      return choice;
    }
  }
}
