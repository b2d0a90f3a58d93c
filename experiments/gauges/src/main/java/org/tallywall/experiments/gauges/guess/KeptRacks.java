package org.tallywall.experiments.gauges.guess;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.hand.JudgeSettings;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.hand.WinHope;

/** What seats keep when they discard, in games of four players of one kind. */
final class KeptRacks {
  /** What the players made of habits go by, unless told otherwise. */
  private static final JudgeSettings USUAL = new JudgeSettings(4, 0.5, 1, 3, 0.5);

  private static final int SLACK = 2;

  private final ConcreteHands card;
  private final PlayerSpec player;
  private final long seed;

  KeptRacks(ConcreteHands card, String kind, long seed) {
    this.card = card;
    this.player = new PlayerSpec(Catalog.standard().type(kind).orElseThrow(), Map.of());
    this.seed = seed;
  }

  List<Kept> play(int games) {
    List<Kept> all = new ArrayList<>();
    List<Keeping> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(new Keeping(player.make()));
    }
    GameListener listener =
        new GameListener() {
          @Override
          public void ended(Outcome outcome) {
            for (int seat = 0; seat < Seats.COUNT; seat++) {
              boolean won = outcome.win() != null && outcome.win().seat() == seat;
              players.get(seat).kept.forEach(seen -> all.add(new Kept(seen, won)));
              players.get(seat).kept.clear();
            }
          }
        };
    Game game = new Game(new TableSetup(card, TableRules.STANDARD), players, listener);
    for (int deal = 0; deal < games; deal++) {
      game.play(Deal.of(seed, deal, TileSet.USUAL));
    }
    return all;
  }

  /** A player who plays as always, and whose racks are judged after each discard. */
  private static final class Keeping extends ForwardingPlayer {
    private final RackJudge judge = new RackJudge(USUAL);
    private final List<double[]> kept = new ArrayList<>();

    Keeping(Player player) {
      super(player);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      TurnChoice choice = super.turn(view, random);
      if (choice instanceof TurnChoice.Discard discard) {
        judge.look(view, SLACK, 0);
        kept.add(WinHope.seen(view, judge.worthWithout(discard.tile())));
      }
      return choice;
    }
  }
}
