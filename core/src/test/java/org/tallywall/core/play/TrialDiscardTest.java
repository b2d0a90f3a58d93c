package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.TileText;

/**
 * A trial of the tile that is then really thrown must foretell what the others do with it, in whole
 * games by the rules of many tables. The players draw no lots, so what they do is certain.
 */
class TrialDiscardTest {
  private static final int GAMES = 100;
  private static final ConcreteHands HANDS = new ConcreteHands(MixedTable.card());

  private OpenTable table;
  private TrialDiscard trial;
  private Boolean foretold;
  private int wins;
  private int exposures;
  private int quiet;
  private int mayWin;
  private int laysOpen;
  private final List<int[]> points = new ArrayList<>();

  /** Tries each tile before it is thrown. */
  private final class Trying extends ForwardingPlayer {
    Trying() {
      super(new GreedyPlayer());
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      TurnChoice choice = super.turn(view, random);
      if (choice instanceof TurnChoice.Discard discard && lastWallIsKnown(view)) {
        tryOut(view, random, discard.tile());
      }
      return choice;
    }
  }

  /** The dice, and so the last wall of some tables, are not known to a position. */
  private static boolean lastWallIsKnown(SeatView view) {
    return view.table().rules().wall().lastTiles() != WallRules.BY_DICE || view.wallLeft() > 24;
  }

  private void tryOut(SeatView view, RandomStream random, int tile) {
    Position position = new Position();
    position.begin(view, random);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      table.view(seat).copyRack(position.rack(seat));
    }
    // Another tile first: one trial must leave nothing behind for the next.
    trial.throwNow(position, firstOf(position, view.seat()));
    trial.laysOpen();
    trial.throwNow(position, tile);
    mayWin = trial.mayWin();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      boolean wins = (table.winsOn(seat) >>> tile & 1) != 0;
      assertThat(wins).as("as the open table has it").isEqualTo((mayWin >> seat & 1) != 0);
    }
    points.clear();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      points.add((mayWin >> seat & 1) == 0 ? null : trial.points(seat));
    }
    laysOpen = trial.laysOpen();
    foretold = true;
  }

  private static int firstOf(Position position, int seat) {
    return position.rack(seat).tiles()[0];
  }

  /** Compares with what happens. */
  private final class Comparing implements GameListener {
    private boolean paid;

    @Override
    public void began(OpenTable open) {
      table = open;
      foretold = false;
    }

    @Override
    public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
      if (foretold) {
        assertThat(laysOpen).isEqualTo(1 << seat | also);
        assertThat(mayWin).isEqualTo(alsoMahjong);
        exposures++;
      }
      foretold = false;
    }

    @Override
    public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
      paid = foretold && by == WinBy.DISCARD;
      if (paid) {
        assertThat(mayWin).isEqualTo(1 << seat | alsoMahjong);
        assertThat(laysOpen).isEqualTo(also);
        wins++;
      }
      foretold = false;
    }

    @Override
    public void drew(int seat, int tile) {
      if (foretold) {
        assertThat(mayWin).isZero();
        assertThat(laysOpen).isZero();
        quiet++;
      }
      foretold = false;
    }

    @Override
    public void ended(Outcome outcome) {
      boolean doubled = table.deal().die(0) == table.deal().die(1);
      if (paid && !(doubled && table.setup().rules().score().diceDoubles())) {
        assertThat(points.get(outcome.win().seat()))
            .containsExactly(outcome.points().stream().mapToInt(Integer::intValue).toArray());
      }
      paid = false;
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5})
  void throwNow_theTileThatIsThrown_foretellsWhatTheOthersDo(int which) {
    TableRules rules = MixedTable.rules().get(which);
    TableSetup setup = new TableSetup(HANDS, rules);
    trial = new TrialDiscard(setup, Collections.nCopies(Seats.COUNT, new GreedyPlayer()));
    List<Trying> players = Stream.generate(Trying::new).limit(Seats.COUNT).toList();
    Game game = new Game(setup, players, new Comparing());

    for (int deal = 0; deal < GAMES; deal++) {
      game.play(Deal.of(4711, deal, rules.tiles()));
    }

    assertThat(wins).isGreaterThan(5);
    assertThat(exposures).isGreaterThan(50);
    assertThat(quiet).isGreaterThan(500);
  }

  /**
   * Seat 2 shows 222b 444b; 1b, 6c and 6d are out, and with them every hand that she could make.
   */
  @ParameterizedTest
  @ValueSource(strings = {"OFF", "AUTO"})
  void laysOpen_aHandThatAllCanSeeToBeDead_isCalledFirst(String calls) {
    TableSetup setup = new TableSetup(HANDS, TableRules.of(Map.of("dead.calls", calls)));
    String sheet =
        "seat 0\nmoment turn\nwall 60\nrack 8c 135799b 1357c NEW\nexposed 2 222b 444b\n"
            + "discards 111b 666c 666d\n";
    SeatView view = PositionSheet.of("typed", sheet, setup).view();
    Position position = new Position();
    position.begin(view, new RandomStream(new StreamKey(1, 0, Purpose.DECISION, 0, 0, 0)));
    position.rack(2).set(TileText.rack("88c 000 5b 7d"));
    trial = new TrialDiscard(setup, Collections.nCopies(Seats.COUNT, new GreedyPlayer()));

    trial.throwNow(position, TileText.rack("8c").tiles()[0]);

    assertThat(trial.laysOpen()).isEqualTo(calls.equals("OFF") ? 1 << 2 : 0);
  }

  @Test
  void trialDiscard_threePlayers_isRefused() {
    TableSetup setup = new TableSetup(HANDS, TableRules.STANDARD);

    assertThatThrownBy(() -> new TrialDiscard(setup, Collections.nCopies(3, new GreedyPlayer())))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
