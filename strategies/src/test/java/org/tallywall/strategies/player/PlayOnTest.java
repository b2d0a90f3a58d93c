package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.TestTable;

/**
 * Played on from any question of a game, with the tiles as they lie and by players that draw no
 * lots, the game ends as it really did.
 */
class PlayOnTest {
  private static final int DEALS = 60;

  @Test
  void gamePlayedOnFromItsOwnMiddle_endsAsItDid() {
    TableSetup setup = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
    List<PlaysOn> seats = Stream.generate(() -> new PlaysOn(setup)).limit(4).toList();
    Game game = new Game(setup, seats, new GameListener() {});
    int compared = 0;
    for (int deal = 0; deal < DEALS; deal++) {
      seats.forEach(seat -> seat.foretold.clear());
      Outcome outcome = game.play(Deal.of(TestTable.SEED, deal, TableRules.STANDARD.tiles()));
      for (PlaysOn seat : seats) {
        for (Outcome foretold : seat.foretold) {
          assertThat(foretold).as("deal %d", deal).isEqualTo(outcome);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(20 * DEALS);
  }

  /** Plays like the nearest player, and at every question plays the game on in another room. */
  private static final class PlaysOn implements SeesOpenTable {
    private final List<Outcome> foretold = new ArrayList<>();
    private final Player plays = new NearestPlayer();
    private final Position position = new Position();
    private final Game elsewhere;
    private OpenTable table;

    PlaysOn(TableSetup setup) {
      elsewhere =
          new Game(
              setup, Stream.generate(NearestPlayer::new).limit(4).toList(), new GameListener() {});
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
    }

    private void playOn(SeatView view, RandomStream random) {
      position.begin(view, random);
      for (int seat = 0; seat < 4; seat++) {
        table.view(seat).copyRack(position.rack(seat));
      }
      int start = table.deal().size() - table.wallLeft();
      for (int at = 0; at < table.wallLeft(); at++) {
        position.wall(at, table.deal().tile(start + at));
      }
      foretold.add(elsewhere.playOn(position));
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return plays.declares(view, random);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return plays.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return plays.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return plays.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return plays.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      playOn(view, random);
      return plays.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      if (!view.claimedThisTurn() && view.exchangesThisTurn() == 0) {
        playOn(view, random);
      }
      return plays.turn(view, random);
    }
  }
}
