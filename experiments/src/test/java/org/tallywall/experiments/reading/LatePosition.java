package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.sheet.SheetView;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * A position drawn by lot, late in a game: seat 0 is on turn, seat 2 shows all but a few tiles of a
 * hand of the card, and sometimes seat 1 shows a group, too.
 */
final class LatePosition {
  static final int WATCHED = 2;

  private static final int WALL = 30;
  private static final int RACK = 13;

  private final TableSetup setup;
  private final RandomStream random;
  private final Rack left = new Rack();
  private final List<Exposure> hers = new ArrayList<>();
  private final List<Exposure> others = new ArrayList<>();

  private LatePosition(TableSetup setup, long number) {
    this.setup = setup;
    random = new RandomStream(new StreamKey(20_261, number, Purpose.DECISION, 0, 0, 0));
  }

  /**
   * A position.
   *
   * @param concealed most tiles that seat 2 holds concealed, and fewest by one
   */
  static SheetView of(TableSetup setup, long number, int concealed) {
    LatePosition position = new LatePosition(setup, number);
    position.expose(concealed);
    return position.sheet();
  }

  private void expose(int concealed) {
    ConcreteHands hands = setup.hands();
    int shown = 0;
    while (shown < RACK - concealed || shown > RACK - 1) {
      hers.clear();
      int at = random.below(hands.size());
      ConcreteHand hand = hands.hand(at);
      boolean closed = hands.line(hands.lineOf(at)).concealed();
      boolean jokers = hands.line(hands.lineOf(at)).terms().jokers();
      shown = closed ? 0 : show(hand, jokers);
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      left.add(kind, setup.rules().tiles().copies(kind));
    }
    hers.forEach(this::take);
    if (random.below(2) == 0) {
      Exposure more = Exposure.of(random.below(Tile.FLOWER), 3, 1 + random.below(2));
      if (left.held(more.kind()) >= more.naturals()
          && left.jokers() >= more.jokers()
          && hands.reach(List.of(more)).size() > 0) {
        others.add(more);
        take(more);
      }
    }
  }

  private int show(ConcreteHand hand, boolean jokersAllowed) {
    int shown = 0;
    int jokersLeft = jokersAllowed ? 4 : 0;
    Rack used = new Rack();
    for (int group = 0; group < hand.groups(); group++) {
      int kind = hand.groupKind(group);
      int size = hand.groupSize(group);
      if (random.below(4) > 0) {
        int free = setup.rules().tiles().copies(kind) - used.held(kind);
        int jokers = Math.max(size - free, random.below(3) == 0 ? 1 : 0);
        if (jokers <= jokersLeft && jokers < size) {
          hers.add(Exposure.of(kind, size, jokers));
          used.add(kind, size - jokers);
          jokersLeft -= jokers;
          shown += size;
        }
      }
    }
    return shown;
  }

  private void take(Exposure exposure) {
    left.remove(exposure.kind(), exposure.naturals());
    left.remove(Tile.JOKER, exposure.jokers());
  }

  private SheetView sheet() {
    int shown = hers.stream().mapToInt(Exposure::size).sum();
    int more = others.stream().mapToInt(Exposure::size).sum();
    int hidden = WALL + 3 * RACK - shown - more;
    int[] tiles = left.tiles();
    random.shuffle(tiles, tiles.length);
    Rack own = new Rack();
    Rack out = new Rack();
    for (int at = 0; at < tiles.length - hidden; at++) {
      (at < RACK + 1 ? own : out).add(tiles[at]);
    }
    String text =
        "seat 0\nmoment turn\nwall %s\nrack %s\nexposed 2 %s\n%sdiscards %s\n"
            .formatted(
                WALL,
                own,
                words(hers),
                others.isEmpty() ? "" : "exposed 1 " + words(others) + "\n",
                out);
    return PositionSheet.of("drawn", text, setup).view();
  }

  private static String words(List<Exposure> exposures) {
    return String.join(" ", exposures.stream().map(Exposure::toString).toList());
  }
}
