package org.tallywall.core.play;

import java.util.Arrays;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/**
 * A deal written down for a test: racks and draws as given, gaps filled with tiles that no line of
 * the test card wants as long as there are any, then with others, jokers last.
 */
public final class StackedDeal {
  private static final String WANTED_BY_NONE = "345b 1789c 45d";

  private final Rack left = new Rack();
  private final int[] wall;

  /** A deal without a tile in its place yet. */
  public StackedDeal(TableRules rules) {
    wall = new int[rules.tiles().size()];
    Arrays.fill(wall, -1);
    for (int kind : rules.tiles().tiles()) {
      left.add(kind);
    }
  }

  /** Deals a seat these tiles, in the order of places; at most 13, or 14 for East. */
  public StackedDeal rack(int seat, String tiles) {
    int place = 0;
    for (int kind : TileText.rack(tiles).tiles()) {
      while (place < Deal.DEALT && (Deal.dealtTo(place) != seat || wall[place] >= 0)) {
        place++;
      }
      if (place == Deal.DEALT) {
        throw new IllegalArgumentException("too many tiles for seat " + seat + ": " + tiles);
      }
      put(place, kind);
    }
    return this;
  }

  /** Makes these the first draws, single symbols separated by spaces; "-" leaves a draw open. */
  public StackedDeal draws(String tiles) {
    return at(Deal.DEALT, tiles.split(" "));
  }

  /** Makes these the last draws of the wall. */
  public StackedDeal lastDraws(String tiles) {
    String[] symbols = tiles.split(" ");
    return at(wall.length - symbols.length, symbols);
  }

  private StackedDeal at(int from, String[] symbols) {
    for (int draw = 0; draw < symbols.length; draw++) {
      if (!symbols[draw].equals("-")) {
        put(from + draw, TileText.tile(symbols[draw]));
      }
    }
    return this;
  }

  private void put(int place, int kind) {
    left.remove(kind);
    wall[place] = kind;
  }

  /** The deal with its gaps filled. */
  public Deal deal(int... dice) {
    int[] filled = wall.clone();
    Rack rest = left.copy();
    int[] fillers = fillers(rest);
    int next = 0;
    for (int place = 0; place < filled.length; place++) {
      if (filled[place] < 0) {
        filled[place] = fillers[next++];
      }
    }
    return Deal.stacked(7, 0, filled, dice);
  }

  private static int[] fillers(Rack rest) {
    int[] fillers = new int[rest.total()];
    int next = 0;
    for (int kind : TileText.rack(WANTED_BY_NONE).tiles()) {
      while (rest.held(kind) > 0) {
        fillers[next++] = kind;
        rest.remove(kind);
      }
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      while (rest.held(kind) > 0) {
        fillers[next++] = kind;
        rest.remove(kind);
      }
    }
    return fillers;
  }

  /** Whether no line of the test card wants a kind. */
  static boolean wantedByNone(int kind) {
    return TileText.rack(WANTED_BY_NONE).held(kind) > 0;
  }
}
