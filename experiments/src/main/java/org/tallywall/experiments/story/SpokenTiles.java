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
      List.of("a single ", "a pair of ", "a pung of ", "a kong of ", "a quint of ", "a sextet of ");

  /** The words of the table. */
  public SpokenTiles() {}

  @Override
  public String tile(int kind) {
    return Tile.isSuited(kind)
        ? NUMBERS.get(Tile.numberOf(kind) - 1) + " " + SUITS.get(Tile.suitOf(kind))
        : HONORS.get(kind - Tile.NORTH);
  }

  @Override
  public String tiles(List<Integer> kinds) {
    return Sentences.list(kinds.stream().sorted().map(this::tile).toList());
  }

  @Override
  public String rack(Rack rack) {
    List<String> parts = new ArrayList<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int held = rack.held(kind);
      if (held == 1) {
        parts.add(kind < Tile.FLOWER ? tile(kind) : "a " + tile(kind));
      } else if (held > 1) {
        boolean several = kind >= Tile.FLOWER;
        parts.add(several ? Sentences.number(held) + " " + tile(kind) + "s" : group(kind, held));
      }
    }
    return Sentences.list(parts);
  }

  private String group(int kind, int size) {
    boolean several = kind >= Tile.FLOWER && size > 1;
    return SIZES.get(size - 1) + tile(kind) + (several ? "s" : "");
  }

  @Override
  public String exposure(Exposure exposure) {
    String group = group(exposure.kind(), exposure.size());
    return switch (exposure.jokers()) {
      case 0 -> group;
      case 1 -> group + " with a joker";
      default -> group + " with " + Sentences.number(exposure.jokers()) + " jokers";
    };
  }

  @Override
  public String hand(List<String> words) {
    List<String> parts = new ArrayList<>();
    for (String word : words) {
      int[] tiles = TileText.rack(word).tiles();
      parts.add(group(tiles[0], tiles.length));
    }
    return Sentences.list(parts);
  }
}
