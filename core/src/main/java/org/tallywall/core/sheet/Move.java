package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.tile.Tile;

/** One answer of a player to one question, whatever the question was. */
public sealed interface Move {
  /**
   * The answer in the words of a position sheet.
   *
   * @return as in {@code claim 4 jokers 1}
   */
  String text();

  /**
   * Passes tiles, or gives them across.
   *
   * @param own kinds of the tiles from the rack, ascending
   * @param blind how many of the incoming tiles go on unseen, 0 to 3
   */
  record Pass(List<Integer> own, int blind) implements Move {
    /**
     * Sorts the tiles.
     *
     * @param own kinds of the tiles from the rack, in any order
     * @param blind how many go on unseen
     */
    public Pass {
      List<Integer> sorted = new ArrayList<>(own);
      Collections.sort(sorted);
      own = List.copyOf(sorted);
    }

    @Override
    public String text() {
      StringBuilder text = new StringBuilder("pass");
      own.forEach(kind -> text.append(' ').append(Tile.symbol(kind)));
      return blind == 0 ? text.toString() : text + " blind " + blind;
    }
  }

  /**
   * Answers the question whether to stop the passes.
   *
   * @param yes true to stop, false to go on
   */
  record Stop(boolean yes) implements Move {
    @Override
    public String text() {
      return yes ? "stop" : "go on";
    }
  }

  /**
   * Offers some tiles across.
   *
   * @param number how many, 0 to 3
   */
  record Courtesy(int number) implements Move {
    @Override
    public String text() {
      return "courtesy " + number;
    }
  }

  /** Lets the discard on offer lie. */
  record Nothing() implements Move {
    @Override
    public String text() {
      return "nothing";
    }
  }

  /**
   * Claims the discard on offer for an exposure.
   *
   * @param size number of tiles, 3 to 6
   * @param jokers jokers from the rack, 0 to {@code size - 1}
   */
  record Claim(int size, int jokers) implements Move {
    @Override
    public String text() {
      return "claim " + size + " jokers " + jokers;
    }
  }

  /** Declares mahjong. */
  record Mahjong() implements Move {
    @Override
    public String text() {
      return "mahjong";
    }
  }

  /**
   * Redeems a joker.
   *
   * @param tile the natural given
   * @param owner the seat whose exposure it is
   */
  record Exchange(int tile, int owner) implements Move {
    @Override
    public String text() {
      return "exchange " + Tile.symbol(tile) + " seat " + owner;
    }
  }

  /**
   * Discards a tile.
   *
   * @param tile its kind
   */
  record Discard(int tile) implements Move {
    @Override
    public String text() {
      return "discard " + Tile.symbol(tile);
    }
  }

  /**
   * A pass as an answer.
   *
   * @param choice what the player set out
   * @return the same as a move
   */
  static Move of(PassChoice choice) {
    return new Pass(list(choice.own()), choice.blind());
  }

  /**
   * Tiles given across as an answer.
   *
   * @param kinds their kinds
   * @return the same as a move
   */
  static Move give(int[] kinds) {
    return new Pass(list(kinds), 0);
  }

  /**
   * What was done with a discard, as an answer.
   *
   * @param choice what the player chose
   * @return the same as a move
   */
  static Move of(ClaimChoice choice) {
    if (choice instanceof ClaimChoice.Expose laid) {
      return new Claim(laid.size(), laid.jokers());
    }
    return choice instanceof ClaimChoice.Mahjong ? new Mahjong() : new Nothing();
  }

  /**
   * What was done in a turn, as an answer.
   *
   * @param view what the player knew
   * @param choice what it chose
   * @return the same as a move
   */
  static Move of(SeatView view, TurnChoice choice) {
    if (choice instanceof TurnChoice.Exchange exchange) {
      int kind = view.exposures(exchange.owner()).get(exchange.exposure()).kind();
      return new Exchange(kind, exchange.owner());
    }
    return choice instanceof TurnChoice.Discard discard
        ? new Discard(discard.tile())
        : new Mahjong();
  }

  private static List<Integer> list(int[] kinds) {
    List<Integer> all = new ArrayList<>();
    for (int kind : kinds) {
      all.add(kind);
    }
    return all;
  }
}
