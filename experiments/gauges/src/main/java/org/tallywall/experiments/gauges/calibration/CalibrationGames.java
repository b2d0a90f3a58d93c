package org.tallywall.experiments.gauges.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.habit.AimHabit;
import org.tallywall.strategies.hand.RackJudge;
import org.tallywall.strategies.setting.SettingValues;

/** Games of four players of one kind, watched while they are played; the same deals for all. */
final class CalibrationGames {
  private final ConcreteHands card;
  private final PlayerSpec player;
  private final long seed;
  private final int number;

  /**
   * Games to be played.
   *
   * @param card the hands of the card
   * @param player the kind of player, with its usual settings
   * @param seed of the deals
   * @param number how many games, deals 0 and on
   */
  CalibrationGames(ConcreteHands card, String player, long seed, int number) {
    this.card = card;
    this.player = new PlayerSpec(Catalog.standard().type(player).orElseThrow(), Map.of());
    this.seed = seed;
    this.number = number;
  }

  /** A tally of hands that judges them as these players do. */
  HandTally hands() {
    return new HandTally(judge());
  }

  /** A tally of chances to win, by what racks are worth to a judge such as these players'. */
  HopeTally hopes() {
    return new HopeTally(judge());
  }

  private RackJudge judge() {
    return AimHabit.rackJudge(new SettingValues(player.type().settings(), player.changed()));
  }

  /**
   * Plays the games with all four watched.
   *
   * @param hands takes what they say of their hands
   * @param risks takes what readers say of the others
   * @param hopes takes what is said of winning
   */
  void together(HandTally hands, RiskTally risks, HopeTally hopes) {
    WatchedPlayer.Notes notes =
        (view, tile) -> {
          hands.discards(view);
          risks.discards(view, tile);
          hopes.discards(view, tile);
        };
    Game game = game(seat -> new WatchedPlayer(player.make(), notes), risks);
    for (int at = 0; at < number; at++) {
      Outcome outcome = game.play(deal(at));
      hands.ended(outcome);
      hopes.ended(outcome);
    }
  }

  /**
   * Plays the games with one watched, seat after seat; the others play as always, but never declare
   * mahjong.
   *
   * @param hands takes what it says of its hands
   */
  void alone(HandTally hands) {
    PlayerSpec mute = player.with("overlooks.win", BigDecimal.ONE);
    List<Game> games = new ArrayList<>();
    for (int watched = 0; watched < Seats.COUNT; watched++) {
      int own = watched;
      games.add(
          game(
              seat ->
                  seat == own
                      ? new WatchedPlayer(player.make(), (view, tile) -> hands.discards(view))
                      : mute.make(),
              GameListener.NONE));
    }
    for (int at = 0; at < number; at++) {
      Outcome outcome = games.get(at % Seats.COUNT).play(deal(at));
      hands.ended(outcome);
    }
  }

  private Deal deal(int at) {
    return Deal.of(seed, at, TileSet.USUAL);
  }

  private Game game(IntFunction<Player> seats, GameListener listener) {
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(seats.apply(seat));
    }
    return new Game(new TableSetup(card, TableRules.STANDARD), players, listener);
  }
}
