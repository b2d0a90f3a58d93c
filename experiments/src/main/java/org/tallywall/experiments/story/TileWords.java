package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/** How tiles are named in a story. */
public interface TileWords {
  /**
   * One tile.
   *
   * @param kind its kind, 0 to 35
   * @return its name
   */
  String tile(int kind);

  /**
   * One tile of which there may be more.
   *
   * @param kind its kind, 0 to 35
   * @return as in "throws a five dot"
   */
  String one(int kind);

  /**
   * Several tiles of one kind, behind their number.
   *
   * @param kind its kind, 0 to 35
   * @return as in "the other three five dots"
   */
  String several(int kind);

  /**
   * Several tiles, as they are passed.
   *
   * @param kinds their kinds, at least one
   * @return their names in a row
   */
  String tiles(List<Integer> kinds);

  /**
   * A rack.
   *
   * @param rack the tiles
   * @return what is on it
   */
  String rack(Rack rack);

  /**
   * An exposure.
   *
   * @param exposure the group
   * @return what it shows
   */
  String exposure(Exposure exposure);

  /**
   * An exposure behind a word that says whose it is.
   *
   * @param exposure the group
   * @return as in "Cora's kong of five dots"
   */
  String group(Exposure exposure);

  /**
   * A winning hand.
   *
   * @param words its groups in the notation
   * @return the whole hand
   */
  String hand(List<String> words);
}
