package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Tiles as they are typed: {@code 5c}, {@code 113b RG0}. */
public final class TypedTiles implements TileWords {
  /** The notation. */
  public TypedTiles() {}

  @Override
  public String tile(int kind) {
    return Tile.symbol(kind);
  }

  @Override
  public String one(int kind) {
    return tile(kind);
  }

  @Override
  public String several(int kind) {
    return tile(kind);
  }

  @Override
  public String tiles(List<Integer> kinds) {
    return String.join(" ", kinds.stream().sorted().map(Tile::symbol).toList());
  }

  @Override
  public String rack(Rack rack) {
    return rack.toString();
  }

  @Override
  public String exposure(Exposure exposure) {
    return exposure.toString();
  }

  @Override
  public String group(Exposure exposure) {
    return exposure(exposure);
  }

  @Override
  public String hand(List<String> words) {
    return String.join(" ", words);
  }
}
