package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.tallywall.core.random.Purpose.ROLLOUT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassMoment;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.TestTable;

/**
 * Played on from any question of a game, with the tiles as they lie and by players that draw no
 * lots, the game ends as it really did.
 */
class PlayOnTest {
  private static final int DEALS = 60;

  @Test
  void gamePlayedOnFromItsOwnMiddle_endsAsItDid() {
    assertThat(compared(TableRules.STANDARD, false)).isGreaterThan(20 * DEALS);
  }

  /** Which tiles go on unseen is drawn by lot, so here none do. */
  @Test
  void gamePlayedOnFromItsPasses_endsAsItDid() {
    TableRules noneUnseen = TableRules.of(Map.of("charleston.blind", "NONE"));
    assertThat(compared(noneUnseen, true)).isGreaterThan(50 * DEALS);
  }

  @Test
  void gamePlayedOnFromTheLastPass_knowsNoneThatTheRulesLeaveOut() {
    TableRules rules = TableRules.of(Map.of("charleston.second", "NONE"));
    TableSetup setup = new TableSetup(TestTable.HANDS, rules);
    PlaysOn seat = new PlaysOn(setup, false);
    Position position = seat.position;
    position.begin(setupView(setup), new RandomStream(new StreamKey(1, 0, ROLLOUT, 0, 0, 0)));
    for (PassMoment moment :
        List.of(new PassMoment.Step(PassStep.RIGHT_2), new PassMoment.Stop())) {
      position.passing(moment);
      assertThatThrownBy(() -> seat.elsewhere.playOn(position))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("by these rules");
    }
  }

  /** What East knows before the first pass. */
  private static SeatView setupView(TableSetup setup) {
    String sheet = "seat 0\nmoment pass right-1\nrack 112233445566b 7c 8d\n";
    return PositionSheet.of("east.txt", sheet, setup).view();
  }

  private static int compared(TableRules rules, boolean passes) {
    TableSetup setup = new TableSetup(TestTable.HANDS, rules);
    List<PlaysOn> seats = Stream.generate(() -> new PlaysOn(setup, passes)).limit(4).toList();
    Game game = new Game(setup, seats, new GameListener() {});
    int compared = 0;
    for (int deal = 0; deal < DEALS; deal++) {
      seats.forEach(seat -> seat.foretold.clear());
      Outcome outcome = game.play(Deal.of(TestTable.SEED, deal, rules.tiles()));
      for (PlaysOn seat : seats) {
        for (Outcome foretold : seat.foretold) {
          assertThat(foretold).as("deal %d", deal).isEqualTo(outcome);
          compared++;
        }
      }
    }
    return compared;
  }

  /** Plays like the nearest player, and at every question plays the game on in another room. */
  private static final class PlaysOn implements SeesOpenTable {
    private final List<Outcome> foretold = new ArrayList<>();
    private final Player plays = new NearestPlayer();
    private final Position position = new Position();
    private final Game elsewhere;
    private final boolean passes;
    private OpenTable table;

    PlaysOn(TableSetup setup, boolean passes) {
      this.passes = passes;
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
      finish();
    }

    private void playOn(SeatView view, RandomStream random, PassMoment moment) {
      if (passes) {
        position.begin(view, random);
        position.passing(moment);
        finish();
      }
    }

    private void finish() {
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
      playOn(view, random, new PassMoment.Step(step));
      return plays.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      playOn(view, random, new PassMoment.Stop());
      return plays.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      playOn(view, random, new PassMoment.CourtesyNumber());
      return plays.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      // Seats are asked in turn but nothing has moved before all have answered.
      playOn(view, random, new PassMoment.CourtesyAgreed(view.seat(), number));
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
