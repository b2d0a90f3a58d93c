package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.ScoreRules;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Checks how a record says that its game ended, and the payments (sections 5 to 8). */
final class EndCheck {
  private final ConcreteHands hands;
  private final PlainHands plain;
  private final TableRules rules;
  private final ReplayTable table;
  private final GameRecord game;

  EndCheck(PlainHands plain, TableRules rules, ReplayTable table, GameRecord game) {
    this.plain = plain;
    this.hands = plain.hands();
    this.rules = rules;
    this.table = table;
    this.game = game;
  }

  /** Checks a win; the winning discard has joined the rack already. */
  void win(GameEvent.Mahjong mahjong, boolean paysAll) {
    GameRecord.End end = game.end();
    GameRecord.Win win = end.win();
    require(end.how().equals("mahjong") && win != null, "the end does not say who won");
    require(
        win.seat() == mahjong.seat()
            && win.by().equals(mahjong.by())
            && win.from() == mahjong.from(),
        "the end and the event differ in seat, by or from");
    Rack rack = table.racks.get(win.seat());
    List<Exposure> exposures = table.exposures.get(win.seat());
    int jokers = rack.jokers() + exposures.stream().mapToInt(Exposure::jokers).sum();
    List<Integer> complete = plain.complete(rack, exposures);
    require(!complete.isEmpty(), "the 14 tiles are not a hand of the card (rule 5.2)");
    int most = 0;
    int unit = 0;
    for (int hand : complete) {
      Line line = hands.line(hands.lineOf(hand));
      int pays = unit(line, jokers);
      most = Math.max(most, pays);
      if (line.id().equals(win.line()) && hands.hand(hand).words().equals(win.hand())) {
        unit = pays;
        require(win.value() == line.value(), "the line's value is " + line.value());
        require(win.jokerless() == jokerless(line, jokers), "jokerless (rule 8.3)");
      }
    }
    require(
        unit > 0,
        "the tiles are not the hand " + Shown.word(String.join(" ", win.hand())) + " (rule 5.2)");
    require(unit == most || !rules.win().bestLine(), "another line pays more (rule 5.2.2)");
    points(win, unit, paysAll);
    require(end.wall() == table.left(), "the wall has " + table.left() + " tiles left");
  }

  private boolean jokerless(Line line, int jokers) {
    boolean eligible =
        switch (rules.score().excludes()) {
          case NONE -> true;
          case CARD_FLAG -> line.terms().jokerless();
          case NO_GROUP_OF_3_PLUS -> line.terms().jokerless() && line.hasLargeGroup();
        };
    return jokers == 0 && eligible;
  }

  private int unit(Line line, int jokers) {
    return line.value() * (jokerless(line, jokers) ? rules.score().jokerless() : 1);
  }

  private void points(GameRecord.Win win, int unit, boolean paysAll) {
    ScoreRules score = rules.score();
    boolean doubled = score.diceDoubles() && game.dice().get(0).equals(game.dice().get(1));
    List<Integer> points = new ArrayList<>();
    int total = 0;
    for (int seat = 0; seat < 4; seat++) {
      int times;
      if (win.by().equals("discard")) {
        int all = score.discarder() + 2 * score.others();
        times =
            seat == win.from() ? paysAll ? all : score.discarder() : paysAll ? 0 : score.others();
      } else {
        boolean single = win.by().equals("exchange") && !rules.win().exchangeSelfDrawn();
        times = single ? 1 : score.selfDrawn();
      }
      int paid = seat == win.seat() ? 0 : unit * times * (doubled ? 2 : 1);
      points.add(-paid);
      total += paid;
    }
    points.set(win.seat(), total);
    require(game.end().points().equals(points), "the payments are " + points + " (rule 8.1)");
  }

  /** Checks a game without a winner. */
  void noWin(String how) {
    GameRecord.End end = game.end();
    require(end.how().equals(how) && end.win() == null, "the end is " + how);
    List<Integer> points = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      boolean paid = how.equals("wall-game") && !table.dead[seat];
      points.add(paid ? rules.score().wallGame() : 0);
    }
    require(end.points().equals(points), "the payments are " + points + " (rule 7.3)");
    require(end.wall() == table.left(), "the wall has " + table.left() + " tiles left");
  }

  /** Whether a tile just thrown from the last wall is hot (7.4). */
  boolean hot(int from, int tile, boolean lastWall) {
    if (!rules.wall().hot() || !lastWall || tile == Tile.JOKER) {
      return false;
    }
    int needed = tile == Tile.FLOWER ? rules.wall().hotFlowerNeeds() : 3;
    return table.faceUp[tile] - 1 + table.racks.get(from).held(tile) < needed;
  }

  /** Whether a claimant's exposures had left one line only when the tile was thrown (8.9). */
  boolean oneHand(int claimant) {
    List<Exposure> exposures = table.exposures.get(claimant);
    return rules.score().oneHand() && !exposures.isEmpty() && plain.lines(exposures) == 1;
  }
}
