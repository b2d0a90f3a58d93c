package org.tallywall.experiments.rack;

import java.util.List;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileText;

/**
 * A rack about which somebody asks.
 *
 * @param text the rack as it was typed
 * @param rack the concealed tiles
 * @param exposures the exposures; 13 or 14 tiles together with the rack
 */
public record RackQuestion(String text, Rack rack, List<Exposure> exposures) {
  /**
   * Copies the tiles.
   *
   * @param text the rack as it was typed
   * @param rack the concealed tiles
   * @param exposures the exposures
   */
  public RackQuestion {
    rack = rack.copy();
    exposures = List.copyOf(exposures);
  }

  /**
   * Reads a rack with its exposures behind a slash, as in {@code 113b 99d RG0 FF / 333cJ}.
   *
   * @param text the tiles
   * @return the question
   * @throws NotationException if a word is wrong, or the tiles are not 13 or 14
   */
  public static RackQuestion read(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return read(text, text, "");
    } else if (text.indexOf('/', slash + 1) >= 0) {
      throw new NotationException(
          text.lastIndexOf('/') + 1, text, "one slash stands between the rack and its exposures");
    }
    // Blanks in place of the rack keep the positions in messages right.
    return read(text, text.substring(0, slash), " ".repeat(slash + 1) + text.substring(slash + 1));
  }

  /**
   * Reads a rack and its exposures, typed apart.
   *
   * @param rack the concealed tiles
   * @param exposed the exposures; blank for none
   * @return the question
   * @throws NotationException if a word is wrong, or the tiles are not 13 or 14
   */
  public static RackQuestion read(String rack, String exposed) {
    return read(exposed.isBlank() ? rack : rack + " / " + exposed, rack, exposed);
  }

  private static RackQuestion read(String text, String concealed, String exposed) {
    Rack rack = TileText.rack(concealed);
    List<Exposure> exposures = TileText.exposures(exposed);
    TileText.checkWhole(rack, exposures);
    return new RackQuestion(text, rack, exposures);
  }
}
