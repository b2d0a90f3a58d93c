package org.tallywall.experiments.gauges.guess;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Positions of games of four players of one kind, each with what lies where the seat that is asked
 * cannot see. Of the questions in play, every so many-th of a game is taken: turns, and discards on
 * offer.
 */
public final class SeenPositions {
  private final ConcreteHands card;
  private final PlayerSpec player;
  private final long seed;
  private final int every;

  /** Takes positions. */
  @FunctionalInterface
  public interface Visitor {
    /**
     * A position.
     *
     * @param view what the seat that is asked knows
     * @param racks the concealed tiles of all four
     * @param random numbers that came with the question
     */
    void visit(SeatView view, List<Rack> racks, RandomStream random);
  }

  /**
   * Positions.
   *
   * @param card the hands of the card
   * @param player the kind of player
   * @param seed of the deals
   * @param every of so many questions one is taken
   */
  public SeenPositions(ConcreteHands card, String player, long seed, int every) {
    this.card = card;
    this.player = new PlayerSpec(Catalog.standard().type(player).orElseThrow(), Map.of());
    this.seed = seed;
    this.every = every;
  }

  /**
   * Plays games and hands over their positions.
   *
   * @param from the first deal
   * @param games how many
   * @param visitor takes the positions
   * @param endOfGame told after each game
   */
  public void play(int from, int games, Visitor visitor, Runnable endOfGame) {
    List<Looking> players = new ArrayList<>();
    int[] asked = new int[1];
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(new Looking(player.make(), every, asked, visitor));
    }
    Game game = new Game(new TableSetup(card, TableRules.STANDARD), players, GameListener.NONE);
    for (int at = from; at < from + games; at++) {
      asked[0] = at;
      game.play(Deal.of(seed, at, TileSet.USUAL));
      endOfGame.run();
    }
  }

  /** A player who plays as always, and whose questions are looked at. */
  private static final class Looking extends ForwardingPlayer implements SeesOpenTable {
    private final int every;
    private final int[] asked;
    private final Visitor visitor;
    private OpenTable table;

    Looking(Player player, int every, int[] asked, Visitor visitor) {
      super(player);
      this.every = every;
      this.asked = asked;
      this.visitor = visitor;
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      look(view, random);
      return super.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      look(view, random);
      return super.turn(view, random);
    }

    private void look(SeatView view, RandomStream random) {
      boolean inPlay = view.wallLeft() < table.deal().size() - Deal.DEALT;
      if (inPlay && asked[0]++ % every == 0) {
        List<Rack> racks = new ArrayList<>();
        for (int seat = 0; seat < Seats.COUNT; seat++) {
          Rack rack = new Rack();
          table.view(seat).copyRack(rack);
          racks.add(rack);
        }
        visitor.visit(view, racks, random);
      }
    }
  }
}
