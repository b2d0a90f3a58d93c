package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** Tiles as they are called at the table: five crak, red, soap. */
public final class SpokenTiles implements TileWords {
  private static final List<String> NUMBERS =
      List.of("one", "two", "three", "four", "five", "six", "seven", "eight", "nine");
  private static final List<String> SUITS = List.of("bam", "crak", "dot");
  private static final List<String> HONORS =
      List.of("north", "east", "west", "south", "red", "green", "soap", "flower", "joker");
  private static final List<String> SIZES =
      List.of("single ", "pair of ", "pung of ", "kong of ", "quint of ", "sextet of ");

  /** The words of the table. */
  public SpokenTiles() {}

  @Override
  public String tile(int kind) {
    return Tile.isSuited(kind)
        ? NUMBERS.get(Tile.numberOf(kind) - 1) + " " + SUITS.get(Tile.suitOf(kind))
        : HONORS.get(kind - Tile.NORTH);
  }

  @Override
  public String one(int kind) {
    String tile = tile(kind);
    return ("ae".indexOf(tile.charAt(0)) < 0 ? "a " : "an ") + tile;
  }

  @Override
  public String tiles(List<Integer> kinds) {
    Rack rack = new Rack();
    kinds.forEach(rack::add);
    return rack(rack);
  }

  @Override
  public String rack(Rack rack) {
    List<String> parts = new ArrayList<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int held = rack.held(kind);
      if (held == 1) {
        parts.add(one(kind));
      } else if (held > 1) {
        boolean several = kind >= Tile.FLOWER;
        parts.add(several ? Sentences.number(held) + " " + several(kind) : "a " + size(kind, held));
      }
    }
    return Sentences.list(parts);
  }

  @Override
  public String exposure(Exposure exposure) {
    return "a "
        + switch (exposure.jokers()) {
          case 0 -> group(exposure);
          case 1 -> group(exposure) + " with a joker";
          default -> group(exposure) + " with " + Sentences.number(exposure.jokers()) + " jokers";
        };
  }

  @Override
  public String group(Exposure exposure) {
    return size(exposure.kind(), exposure.size());
  }

  @Override
  public String hand(List<String> words) {
    List<String> parts = new ArrayList<>();
    for (String word : words) {
      int[] tiles = TileText.rack(word).tiles();
      parts.add("a " + size(tiles[0], tiles.length));
    }
    return Sentences.list(parts);
  }

  private String size(int kind, int size) {
    return SIZES.get(size - 1) + (size == 1 ? tile(kind) : several(kind));
  }

  @Override
  public String several(int kind) {
    return tile(kind) + "s";
  }
}
