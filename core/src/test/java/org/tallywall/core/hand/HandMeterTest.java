package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** The one formula of distances against plain trying, and every quick way against the formula. */
@Tag("one-jdk")
class HandMeterTest {
  private static final long SEED = 20261125;
  private static final int CARDS = 300;
  private static final int RACKS_A_CARD = 100;
  private static final int SLACK = 2;

  /** 30,000 racks with exposures on 300 cards, each measured against one hand. */
  @Test
  void away_onManyRacksAndCards_isWhatTryingEveryPlacementGives() {
    HandMeter meter = new HandMeter();
    int measured = 0;
    for (int number = 0; number < CARDS; number++) {
      RandomPositions positions = new RandomPositions(SEED, number);
      ConcreteHands hands = positions.card();
      for (int at = 0; at < RACKS_A_CARD; at++) {
        List<Exposure> exposures = positions.exposures(hands);
        Reach reach = hands.reach(exposures);
        Rack rack = positions.rack(reach);
        meter.hold(rack);
        if (reach.size() > 0) {
          int index = positions.random().below(reach.size());
          boolean jokers = hands.line(reach.line(index)).terms().jokers();
          int plain = PlainAway.of(reach.hand(index), rack, exposures, jokers);
          assertThat(meter.away(reach, index))
              .as(
                  "card %d rack %s exposures %s hand %s",
                  number, rack, exposures, reach.hand(index))
              .isEqualTo(plain);
          measured++;
        }
      }
    }
    assertThat(measured).isGreaterThan(CARDS * RACKS_A_CARD * 8 / 10);
  }

  @Test
  void searches_onManyRacks_agreeWithMeasuringEveryHand() {
    RackMeter remembering = new RackMeter();
    for (int number = 0; number < 60; number++) {
      RandomPositions positions = new RandomPositions(SEED + 1, number);
      ConcreteHands hands = positions.card();
      for (int at = 0; at < 40; at++) {
        List<Exposure> exposures = positions.exposures(hands);
        Reach reach = hands.reach(exposures);
        Rack rack = positions.rack(reach);
        compare(reach, rack, obtainable(positions, rack), remembering);
      }
    }
  }

  private static int[] obtainable(RandomPositions positions, Rack rack) {
    int[] obtainable = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      int unseen = TileSet.USUAL.copies(kind) - rack.held(kind);
      obtainable[kind] = rack.held(kind) + positions.random().below(unseen + 1);
    }
    return obtainable;
  }

  private static void compare(Reach reach, Rack rack, int[] obtainable, RackMeter remembering) {
    HandMeter meter = new HandMeter();
    meter.hold(rack);
    int[] away = meter.all(reach);
    int least = Arrays.stream(away).min().orElse(HandMeter.NONE);
    assertThat(meter.least(reach)).isEqualTo(least);
    assertThat(meter.least(reach, 3)).isEqualTo(Math.min(3, least));
    TileBits bits = new TileBits();
    bits.set(rack);
    int enough = reach.wanted() - rack.jokers();
    assertThat(LeastScan.straight(reach, bits, enough, HandMeter.NONE)).isEqualTo(least);
    assertThat(LeastScan.skipping(reach, bits, enough, HandMeter.NONE)).isEqualTo(least);
    compareLines(reach, meter, away);
    meter.obtainable(obtainable);
    remembering.obtainable(obtainable);
    remembering.hold(rack, reach);
    assertThat(remembering.least()).isEqualTo(least);
    assertThat(remembering.complete()).isEqualTo(least == 0);
    compareNear(reach, meter, away, remembering);
    if (rack.total() < reach.wanted()) {
      assertThat(remembering.waits()).isEqualTo(meter.waits(reach)).isEqualTo(waits(reach, rack));
    }
  }

  private static void compareLines(Reach reach, HandMeter meter, int[] away) {
    int[] lines = new int[reach.hands().lines()];
    int[] expected = new int[lines.length];
    Arrays.fill(expected, HandMeter.NONE);
    for (int at = 0; at < away.length; at++) {
      expected[reach.line(at)] = Math.min(expected[reach.line(at)], away[at]);
    }
    meter.leastByLine(reach, lines);
    assertThat(lines).isEqualTo(expected);
  }

  private static void compareNear(Reach reach, HandMeter meter, int[] away, RackMeter remembering) {
    int least = HandMeter.NONE;
    for (int at = 0; at < away.length; at++) {
      least = meter.dead(reach, at) ? least : Math.min(least, away[at]);
    }
    for (int slack = 0; slack <= SLACK; slack++) {
      StringBuilder expected = new StringBuilder();
      for (int at = 0; at < away.length; at++) {
        if (!meter.dead(reach, at) && away[at] <= least + slack) {
          expected.append(at).append(':').append(away[at]).append(' ');
        }
      }
      NearHands found = new NearHands();
      meter.nearest(reach, slack, found);
      assertThat(text(found)).isEqualTo(expected.toString());
      assertThat(found.least()).isEqualTo(least);
      remembering.nearest(slack, found);
      assertThat(text(found)).isEqualTo(expected.toString());
      assertThat(found.least()).isEqualTo(least);
    }
  }

  private static String text(NearHands found) {
    StringBuilder text = new StringBuilder();
    for (int at = 0; at < found.count(); at++) {
      text.append(found.hand(at)).append(':').append(found.away(at)).append(' ');
    }
    return text.toString();
  }

  /** The kinds that make the rack complete, each tried; 0 unless the rack is one away. */
  private static long waits(Reach reach, Rack rack) {
    HandMeter meter = new HandMeter();
    long waits = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (rack.held(kind) < TileSet.USUAL.copies(kind)) {
        Rack more = rack.copy();
        more.add(kind);
        meter.hold(more);
        waits |= meter.least(reach) == 0 ? 1L << kind : 0;
      }
    }
    return waits;
  }

  @Test
  void dead_isWhatCountingWhatIsLeftGives() {
    for (int number = 0; number < 200; number++) {
      RandomPositions positions = new RandomPositions(SEED + 2, number);
      ConcreteHands hands = positions.card();
      List<Exposure> exposures = positions.exposures(hands);
      Reach reach = hands.reach(exposures);
      Rack rack = positions.rack(reach);
      int[] obtainable = obtainable(positions, rack);
      HandMeter meter = new HandMeter();
      meter.hold(rack);
      meter.obtainable(obtainable);
      for (int at = 0; at < reach.size(); at++) {
        boolean jokers = hands.line(reach.line(at)).terms().jokers();
        assertThat(meter.dead(reach, at)).isEqualTo(dead(reach, at, exposures, obtainable, jokers));
        assertThat(meter.mayBeDead(reach) || !meter.dead(reach, at)).isTrue();
      }
    }
  }

  private static boolean dead(
      Reach reach, int at, List<Exposure> exposures, int[] obtainable, boolean jokersAllowed) {
    int lacking = 0;
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      int total = reach.hand(at).total(kind);
      for (Exposure exposure : exposures) {
        total -= exposure.kind() == kind ? exposure.size() : 0;
      }
      int strict = jokersAllowed ? reach.hand(at).loose(kind) : total;
      if (strict > obtainable[kind]) {
        return true;
      }
      lacking += Math.max(0, total - obtainable[kind]);
    }
    return lacking > obtainable[Tile.JOKER];
  }

  @Test
  void lack_addsUpToTheDistance() {
    for (int number = 0; number < 100; number++) {
      RandomPositions positions = new RandomPositions(SEED + 3, number);
      ConcreteHands hands = positions.card();
      Reach reach = hands.closed();
      Rack rack = positions.rack(reach);
      HandMeter meter = new HandMeter();
      meter.hold(rack);
      Lack lack = new Lack();
      for (int at = 0; at < reach.size(); at++) {
        meter.lack(reach, at, lack);
        int jokers = hands.line(reach.line(at)).terms().jokers() ? rack.jokers() : 0;
        int away = Math.max(lack.naturals(), lack.naturals() + lack.opens() - jokers);
        assertThat(meter.away(reach, at)).isEqualTo(away);
      }
    }
  }
}
