package org.tallywall.experiments.chances.words;

import java.util.List;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.experiments.chances.Counted;
import org.tallywall.experiments.chances.KindsHeld;
import org.tallywall.experiments.chances.TilesDrawn;
import org.tallywall.experiments.words.Words;

/** What is counted in a deal. */
public enum Dealt {
  /** Jokers. */
  JOKERS("joker", "jokers", "", Tile.JOKER),
  /** Flowers. */
  FLOWERS("flower", "flowers", "", Tile.FLOWER),
  /** Tiles of one kind with four copies. */
  COPIES("tile", "tiles", " of a kind that you name before the deal", Tile.FIRST_BAM),
  /** Kinds of which two or more are dealt. */
  PAIRS("pair", "pairs", "", -1);

  private static final int PAIR = 2;

  private final String one;
  private final String several;
  private final String which;
  private final int kind;

  Dealt(String one, String several, String which, int kind) {
    this.one = one;
    this.several = several;
    this.which = which;
    this.kind = kind;
  }

  /**
   * The most that can be counted.
   *
   * @param set the tiles on the table
   * @return the number of such tiles in the set; of pairs, the number of kinds
   */
  public int most(TileSet set) {
    return this == PAIRS ? Tile.FLOWER : set.copies(kind);
  }

  /**
   * What is counted, for a message.
   *
   * @return such as "jokers"
   */
  public String several() {
    return several;
  }

  Counted in(TileSet set, int tiles) {
    return this == PAIRS
        ? new KindsHeld(set, tiles, PAIR)
        : new TilesDrawn(set.size(), set.copies(kind), tiles);
  }

  /** At least so many of them. */
  String atLeast(int least) {
    return "at least " + Words.spelled(least) + " " + (least == 1 ? one : several) + which;
  }

  String stem() {
    return several.equals("tiles") ? "copies" : several;
  }

  String tableTitle() {
    return switch (this) {
      case COPIES -> "The chance of each number of tiles of one kind";
      default -> "The chance of each number of " + several;
    };
  }

  /** So many on average, such as "0.68 jokers". */
  String average(String number) {
    return number + " " + several + (this == COPIES ? " of each kind" : "");
  }

  String title() {
    return switch (this) {
      case JOKERS -> "How many jokers are dealt to you?";
      case FLOWERS -> "How many flowers are dealt to you?";
      case COPIES -> "How many tiles of one kind are dealt to you?";
      case PAIRS -> "How many pairs are dealt to you?";
    };
  }

  /** Out of what is dealt. */
  String inTheSet(TileSet set) {
    String all = "The set has %s tiles".formatted(set.size());
    return switch (this) {
      case JOKERS, FLOWERS -> "%s, %s of them %s.".formatted(all, set.copies(kind), several);
      case COPIES -> all + ", 4 of them of the kind.";
      case PAIRS -> all + ", 4 of each of 34 kinds; flowers and jokers do not count as pairs.";
    };
  }

  How how(TileSet set) {
    String mixed = "The tiles are well mixed.";
    String letters = "Here n = %s tiles in the set".formatted(set.size());
    return switch (this) {
      case JOKERS, FLOWERS ->
          How.ofDraws(
              "%s, m = %s %s, d = the tiles dealt.".formatted(letters, set.copies(kind), several),
              mixed);
      case COPIES ->
          How.ofDraws("%s, m = 4 of the kind, d = the tiles dealt.".formatted(letters), mixed);
      case PAIRS ->
          new How(
              List.of(
                  "(1 + 4x + y(6x\u00b2 + 4x\u00b3 + x\u2074))^34 \u00d7 (1 + x)^%s"
                      .formatted(set.flowers() + set.jokers())),
              "Multiplied out, this has at x^d y^k the number of deals of d tiles with exactly k"
                  + " pairs, for of each of the 34 kinds 0, 1, 2, 3, or 4 tiles can be dealt in 1, 4,"
                  + " 6, 4, or 1 ways. Divided by the number of all deals of d tiles, that is the"
                  + " chance.",
              "generating functions, as in Graham, Knuth, and Patashnik, Concrete Mathematics,"
                  + " chapter 7; counted in whole numbers.",
              List.of(
                  mixed,
                  "Counted are the 34 kinds with four tiles each. Three or four alike count as one"
                      + " pair; flowers and jokers do not count."));
    };
  }
}
