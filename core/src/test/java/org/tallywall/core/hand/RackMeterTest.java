package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** A meter that remembers, on racks that change tile by tile, against one that measures anew. */
class RackMeterTest {
  private static final int CARDS = 12;
  private static final int CHANGES = 250;

  /** Enough hands for the meter to remember at all, and a last word of lanes that is not full. */
  private static final int MANY = 400;

  @Test
  void distances_asTheRackChangesTileByTile_areThoseMeasuredAnew() {
    RackMeter remembering = new RackMeter();
    int notFull = 0;
    int dead = 0;
    for (int number = 0; number < CARDS; number++) {
      RandomPositions positions = new RandomPositions(31, number);
      ConcreteHands hands = large(positions);
      notFull += hands.size() % Lanes.COUNT == 0 ? 0 : 1;
      Rack rack = positions.rack(hands.closed());
      for (int change = 0; change < CHANGES; change++) {
        change(rack, positions.random());
        dead += compare(hands.closed(), rack, positions.random(), remembering) ? 1 : 0;
      }
    }
    assertThat(notFull).isGreaterThan(CARDS / 2);
    assertThat(dead).isGreaterThan(CARDS * CHANGES / 20);
  }

  @Test
  void distances_asOneMeterGoesFromCardToCardAndBack_areThoseMeasuredAnew() {
    RackMeter remembering = new RackMeter();
    RandomPositions positions = new RandomPositions(32, 0);
    List<ConcreteHands> cards = List.of(large(positions), large(positions), positions.card());
    for (int change = 0; change < CHANGES; change++) {
      Reach reach = cards.get(positions.random().below(cards.size())).closed();
      compare(reach, positions.rack(reach), positions.random(), remembering);
    }
  }

  @Test
  void narrow_asARackLosesTilesAndFewerCanBeHad_isWhatASearchFindsWhereAnyIsLeft() {
    int left = 0;
    for (int number = 0; number < CARDS; number++) {
      RandomPositions positions = new RandomPositions(33, number);
      Reach reach = (number % 2 == 0 ? large(positions) : positions.card()).closed();
      for (int change = 0; change < CHANGES; change++) {
        left += narrowed(reach, positions) ? 1 : 0;
      }
    }
    assertThat(left).isBetween(CARDS * CHANGES / 4, CARDS * CHANGES * 3 / 4);
  }

  private static boolean narrowed(Reach reach, RandomPositions positions) {
    RandomStream random = positions.random();
    Rack rack = positions.rack(reach);
    RackMeter meter = new RackMeter();
    int[] obtainable = new int[Tile.KINDS];
    Arrays.setAll(obtainable, TileSet.USUAL::copies);
    meter.obtainable(obtainable);
    meter.hold(rack, reach);
    NearHands found = new NearHands();
    meter.nearest(random.below(3), found);
    for (int lost = random.below(3); lost > 0; lost--) {
      rack.remove(rack.tiles()[random.below(rack.total())]);
    }
    for (int gone = random.below(30); gone > 0; gone--) {
      int kind = random.below(Tile.KINDS);
      obtainable[kind] = Math.max(rack.held(kind), obtainable[kind] - 1);
    }
    HandMeter anew = new HandMeter();
    anew.hold(rack);
    anew.obtainable(obtainable);
    boolean left = anew.narrow(reach, found);
    NearHands expected = new NearHands();
    anew.nearest(reach, 0, expected);
    if (left) {
      assertThat(found.least()).isEqualTo(expected.least());
      assertThat(text(found)).isEqualTo(text(expected));
    }
    return left;
  }

  private static ConcreteHands large(RandomPositions positions) {
    ConcreteHands hands = positions.card();
    while (hands.size() < MANY) {
      hands = positions.card();
    }
    return hands;
  }

  /** One to three tiles go and as many come, or one more or less; 7 to 14 tiles remain. */
  private static void change(Rack rack, RandomStream random) {
    int tiles = 1 + random.below(3);
    int left = rack.total() - tiles;
    int coming = Math.max(7 - left, Math.min(14 - left, tiles + random.below(3) - 1));
    for (int gone = 0; gone < tiles; gone++) {
      rack.remove(rack.tiles()[random.below(rack.total())]);
    }
    while (coming > 0) {
      int kind = random.below(4) == 0 ? Tile.JOKER : random.below(Tile.KINDS);
      if (rack.held(kind) < TileSet.USUAL.copies(kind)) {
        rack.add(kind);
        coming--;
      }
    }
  }

  /** Compares all answers; tells whether the nearest hand of all is a dead one. */
  private static boolean compare(
      Reach reach, Rack rack, RandomStream random, RackMeter remembering) {
    int[] obtainable = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int copies = TileSet.USUAL.copies(kind);
      int unseen = copies - rack.held(kind);
      boolean few = random.below(2) == 0;
      obtainable[kind] = few ? rack.held(kind) + random.below(unseen + 1) : copies;
    }
    HandMeter meter = new HandMeter();
    meter.hold(rack);
    meter.obtainable(obtainable);
    remembering.obtainable(obtainable);
    remembering.hold(rack, reach);
    assertThat(remembering.least()).isEqualTo(meter.least(reach));
    assertThat(remembering.complete()).isEqualTo(meter.least(reach) == 0);
    NearHands expected = new NearHands();
    NearHands found = new NearHands();
    for (int slack = 0; slack <= 2; slack++) {
      meter.nearest(reach, slack, expected);
      remembering.nearest(slack, found);
      assertThat(found.least()).isEqualTo(expected.least());
      assertThat(text(found)).isEqualTo(text(expected));
    }
    return found.least() > meter.least(reach);
  }

  private static String text(NearHands found) {
    StringBuilder text = new StringBuilder();
    for (int at = 0; at < found.count(); at++) {
      text.append(found.hand(at)).append(':').append(found.away(at)).append(' ');
    }
    return text.toString();
  }
}
