package org.tallywall.core.rules;

import org.tallywall.core.card.Line;

/** Works out who pays what (section 8). */
public final class Settlement {
  private final ScoreRules score;
  private final boolean exchangeSelfDrawn;

  /**
   * A settlement by the rules of a table.
   *
   * @param rules the table's rules
   */
  public Settlement(TableRules rules) {
    this.score = rules.score();
    this.exchangeSelfDrawn = rules.win().exchangeSelfDrawn();
  }

  /** How a win came about, for payment. */
  public enum Way {
    /** On the winner's own tile: drawn, or complete before play. */
    SELF_DRAWN,
    /** By a joker exchange. */
    EXCHANGE,
    /** On another player's discard. */
    DISCARD,
    /** On a discard for which the discarder pays for all (7.4, 8.9). */
    DISCARD_PAYING_ALL
  }

  /**
   * Whether a hand without jokers on a line is multiplied (8.3, 8.4).
   *
   * @param line the line won on
   * @param jokers how many of the 14 tiles are jokers
   * @return true if the payment is multiplied for it
   */
  public boolean jokerless(Line line, int jokers) {
    if (jokers > 0) {
      return false;
    }
    return switch (score.excludes()) {
      case NO_GROUP_OF_3_PLUS -> line.hasLargeGroup() && line.terms().jokerless();
      case CARD_FLAG -> line.terms().jokerless();
      case NONE -> true;
    };
  }

  /**
   * What one unit of a line is worth: its value, multiplied for a jokerless hand.
   *
   * @param line the line won on
   * @param jokers how many of the 14 tiles are jokers
   * @return points, above 0
   */
  public int unit(Line line, int jokers) {
    return line.value() * (jokerless(line, jokers) ? score.jokerless() : 1);
  }

  /**
   * The points of a win.
   *
   * @param winner the winner's seat, 0 to 3
   * @param discarder the discarder's seat, or -1
   * @param way how the win came about
   * @param unit points of one unit
   * @param doubleDice whether the dice showed a double
   * @return four numbers that sum to zero
   */
  public int[] win(int winner, int discarder, Way way, int unit, boolean doubleDice) {
    int stake = unit * (score.diceDoubles() && doubleDice ? 2 : 1);
    int[] points = new int[4];
    for (int seat = 0; seat < 4; seat++) {
      if (seat != winner) {
        int paid = stake * multiple(seat == discarder, way);
        points[seat] -= paid;
        points[winner] += paid;
      }
    }
    return points;
  }

  private int multiple(boolean discarder, Way way) {
    return switch (way) {
      case SELF_DRAWN -> score.selfDrawn();
      case EXCHANGE -> exchangeSelfDrawn ? score.selfDrawn() : 1;
      case DISCARD -> discarder ? score.discarder() : score.others();
      case DISCARD_PAYING_ALL -> discarder ? score.discarder() + 2 * score.others() : 0;
    };
  }

  /**
   * The points of a wall game.
   *
   * @param live which seats are live
   * @return four numbers; zero unless the table plays with a consolation
   */
  public int[] wallGame(boolean[] live) {
    int[] points = new int[4];
    for (int seat = 0; seat < 4; seat++) {
      points[seat] = live[seat] ? score.wallGame() : 0;
    }
    return points;
  }
}
