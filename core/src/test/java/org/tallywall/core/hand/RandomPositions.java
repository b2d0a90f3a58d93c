package org.tallywall.core.hand;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.CardReading;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** Cards, racks and exposures drawn from a seed, near enough to each other to be interesting. */
final class RandomPositions {
  private static final int[][] SHAPES = {
    {4, 2, 3, 3, 2}, {3, 3, 4, 4}, {2, 3, 4, 5}, {5, 2, 5, 2}, {6, 4, 2, 1, 1},
    {2, 2, 2, 2, 2, 2, 2}, {1, 1, 1, 1, 4, 3, 3}, {3, 3, 3, 3, 2}, {4, 4, 4, 2}, {3, 2, 3, 2, 4}
  };

  private final RandomStream random;

  RandomPositions(long seed, long number) {
    random = new RandomStream(new StreamKey(seed, number, Purpose.CARD, 0, 0, 0));
  }

  RandomStream random() {
    return random;
  }

  /** A card of some lines, concealed and jokerless ones among them. */
  ConcreteHands card() {
    while (true) {
      StringBuilder lines = new StringBuilder();
      for (int line = 0; line < 9; line++) {
        lines
            .append("{\"tiles\":\"")
            .append(tiles())
            .append("\",\"slide\":\"any\",\"value\":25,\"concealed\":")
            .append(random.below(5) == 0)
            .append(",\"jokers\":")
            .append(random.below(5) != 0)
            .append("},");
      }
      CardReading reading =
          CardFile.json(
              "drawn",
              "{\"card\":\"drawn\",\"families\":[{\"family\":\"All\",\"lines\":[" + lines + "]}]}");
      if (reading.faults().isEmpty()) {
        Card card = reading.card();
        return new ConcreteHands(card);
      }
    }
  }

  private String tiles() {
    List<String> words = new ArrayList<>();
    int first = 1 + random.below(7);
    int[] shape = SHAPES[random.below(SHAPES.length)];
    for (int group = 0; group < shape.length; group++) {
      String symbol = "NEWSRG0F".substring(random.below(8)).substring(0, 1);
      boolean suited = group == 0 || random.below(4) > 0;
      int number = first + random.below(3);
      String suit = "xyz".substring(random.below(3)).substring(0, 1);
      words.add(
          suited
              ? String.valueOf(number).repeat(shape[group]) + suit
              : symbol.repeat(shape[group]));
    }
    return String.join(" ", words);
  }

  /** Exposures that leave a hand of the card possible; often none. */
  List<Exposure> exposures(ConcreteHands hands) {
    ConcreteHand hand = hands.hand(random.below(hands.size()));
    List<Exposure> exposures = new ArrayList<>();
    int wanted = random.below(3);
    for (int group = 0; group < hand.groups() && exposures.size() < wanted; group++) {
      int size = hand.groupSize(group);
      int least = Math.max(0, size - TileSet.USUAL.copies(hand.groupKind(group)));
      int jokers = least + random.below(2);
      if (jokers < size) {
        exposures.add(new Exposure(hand.groupKind(group), size, jokers));
      }
    }
    return exposures;
  }

  /** A rack that fills the exposures up to 13 or 14 tiles, half of it from a hand of the reach. */
  Rack rack(Reach reach) {
    Rack rack = new Rack();
    int size = reach.wanted() - random.below(2);
    ConcreteHand hand = reach.size() == 0 ? null : reach.hand(random.below(reach.size()));
    while (rack.total() < size) {
      int kind = random.below(Tile.KINDS);
      if (hand != null && random.below(3) > 0) {
        kind = random.below(6) == 0 ? Tile.JOKER : wanted(hand);
      }
      if (rack.held(kind) < TileSet.USUAL.copies(kind)) {
        rack.add(kind);
      }
    }
    return rack;
  }

  private int wanted(ConcreteHand hand) {
    int kind = random.below(Tile.NATURALS);
    while (hand.total(kind) == 0) {
      kind = random.below(Tile.NATURALS);
    }
    return kind;
  }
}
