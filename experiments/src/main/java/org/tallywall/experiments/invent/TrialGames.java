package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.card.Card;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.player.NearestPlayer;

/**
 * Games of four players who head for the nearest line, to see whether a card is balanced: no line
 * has more than a tenth of the wins, every family at least a fiftieth, and between 8 and 35 games
 * in 100 are won by nobody.
 */
final class TrialGames {
  private static final double MOST_OF_A_LINE = 0.10;
  private static final double LEAST_OF_A_FAMILY = 0.02;
  private static final double LEAST_WALL = 0.08;
  private static final double MOST_WALL = 0.35;

  private final ConcreteHands hands;
  private final TableSetup table;
  private final Game game;
  private final int[] wins;
  private int games;
  private int won;

  TrialGames(Card card) {
    this.hands = new ConcreteHands(card);
    this.table = new TableSetup(hands, TableRules.STANDARD);
    this.wins = new int[hands.lines()];
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      players.add(new NearestPlayer());
    }
    this.game = new Game(table, players, GameListener.NONE);
  }

  /** Plays further deals until there are so many. */
  void playTo(int number, long seed) {
    for (; games < number; games++) {
      Outcome outcome = game.play(Deal.of(seed, games, table.rules().tiles()));
      if (outcome.win() != null) {
        wins[outcome.win().line()]++;
        won++;
      }
    }
  }

  /**
   * What is out of balance.
   *
   * @param slack how many times the bounds may be missed: above 1 after few games, below 1 to keep
   *     them with something to spare
   * @return a few words, or nothing where the card is balanced
   */
  String complaint(double slack) {
    double wall = (double) (games - won) / games;
    if (wall * slack < LEAST_WALL || wall > MOST_WALL * slack) {
      return "games that nobody wins: " + percent(games - won, games);
    }
    for (int line = 0; line < wins.length; line++) {
      if (wins[line] > MOST_OF_A_LINE * slack * won) {
        return "wins with " + hands.line(line).id() + ": " + percent(wins[line], won);
      }
    }
    for (Map.Entry<String, Integer> family : byFamily().entrySet()) {
      if (family.getValue() * slack < LEAST_OF_A_FAMILY * won) {
        return "wins with " + family.getKey() + ": " + percent(family.getValue(), won);
      }
    }
    return "";
  }

  private Map<String, Integer> byFamily() {
    Map<String, Integer> families = new LinkedHashMap<>();
    for (int line = 0; line < wins.length; line++) {
      families.merge(hands.line(line).family(), wins[line], Integer::sum);
    }
    return families;
  }

  /** A share in tenths of a percent. */
  private static String percent(int part, int whole) {
    long tenths = whole == 0 ? 0 : Math.round(1000.0 * part / whole);
    return tenths / 10 + "." + tenths % 10 + " in 100";
  }
}
