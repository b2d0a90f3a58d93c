package org.tallywall.core.hand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.TestCards;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;

/** Distances worked out by hand on the test card, cases EC-50 to EC-52 of the rules among them. */
class WorkedDistancesTest {
  private static final ConcreteHands CARD = new ConcreteHands(TestCards.testCard());

  private static int away(ConcreteHands hands, String line, String rack, String exposures) {
    Reach reach = hands.reach(TileText.exposures(exposures == null ? "" : exposures));
    HandMeter meter = new HandMeter();
    meter.hold(TileText.rack(rack));
    for (int at = 0; at < reach.size(); at++) {
      if (hands.line(reach.line(at)).id().equals(line)) {
        return meter.away(reach, at);
      }
    }
    return HandMeter.NONE;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // complete, and nine of fourteen
        "T1 | 111b 4444c NNNN RRR     |           | 0",
        "T8 | 111b 4444c NNNN RRR     |           | 0",
        "T1 | 111b 444c NN R 678d 99c |           | 5",
        // jokers stand in groups of three or more, all of a group if need be (EC-51)
        "T1 | 11b 444c NN J 567d F 2b |           | 6",
        "T5 | 2222d SSSS JJJJJJ       |           | 0",
        "T1 | JJJJJJJJ 4c NN RRR      |           | 0",
        // never in a pair or single (EC-50, EC-25, EC-26)
        "T2 | F 7777d 7777b GGGG J    |           | 1",
        "T2 | FF GGGG JJJJJJJJ        |           | 0",
        "T6 | NEW 2222c 99d 6666b J   |           | 1",
        "T6 | NEWS 2222c 9d 6666b J   |           | 1",
        "T6 | NEWS JJJJ 99d JJJJ      |           | 0",
        "T4 | 11d 33d 44c 66c 88b 9b E JJ |       | 2",
        "T4 | JJJJJJJJ 5b             |           | 14",
        // naturals fill the pair first (EC-52)
        "T7 | FFFFF 3333c JJ 000      |           | 0",
        "T7 | FFFFF 333c JJJ 000      |           | 0",
        "T7 | FFFFF 33c JJJJ 000      |           | 0",
        "T7 | FFFFF 3c JJJJJ 000      |           | 1",
        "T7 | FFFFF JJJJJJ 000        |           | 2",
        "T7 | FFFFF 3333c J 000       |           | 1",
        "T7 | FFFFFFFF 3333c J        |           | 4",
        // exposures count as matched whole, and rule lines out
        "T1 | 111b NNN RRR F          | 444cJ     | 1",
        "T1 | R                       | 11bJ 4444c NNNJ | 2",
        "T1 | RRR                     | 11bJ 4444c NNNJ | 0",
        "T8 | RR                      | 11bJ 4444c NNNJ | 1",
        "T6 | NEWS 22c 99d 6b         | 666bJ     | 2",
        "T7 | 3333c JJ 000            | FFFFJ     | 0",
        "T2 | 111b 4444c NNN          | 444cJ     | 99",
        "T3 | FF 555c 888d WW         | 222b      | 99",
        "T1 | 111b NNNN RRR           | 444c      | 99",
      })
  void distance_onTheTestCard_isTheOneWorkedOut(
      String line, String rack, String exposures, int away) {
    assertThat(away(CARD, line, rack, exposures)).isEqualTo(away);
  }

  /** A line that forbids jokers, and its exposures. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "111b 4444c NNNN RRR  |      | 0",
        "111b 444c NNNN RR JJ |      | 2",
        "JJJJJJ 11b           |      | 12",
        "111b 4444c RR J      | NNNN | 1",
        "111b 4444c RR J      | NNNJ | 99",
      })
  void distance_onALineWithoutJokers_leavesThemAside(String rack, String exposures, int away) {
    ConcreteHands hands =
        new ConcreteHands(
            CardFile.json(
                    "c.json",
                    TestCards.testCardText()
                        .replace("\"value\": 25", "\"value\": 25, \"jokers\": false"))
                .orThrow());
    assertThat(away(hands, "T1", rack, exposures)).isEqualTo(away);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "111b 4444c NNNN RR     |             | RJ",
        "11b 4444c NNNN RRR     |             | 1b J",
        "11b 4444c NNNN RR J    |             | 1b RJ",
        "NEW 2222c 99d 6666b    |             | S",
        "NEWS 2222c 9d 6666b    |             | 9d",
        "NEWS 222c 99d 6666b    |             | 2c J",
        "FFFFF 3c JJJJ 000      |             | 3c",
        "FFFFF 33c JJJ 000      |             | 3c J",
        "FFFFF 3c JJJJJ 00      |             | 3c",
        "FFFF 33c JJJJ 000      |             | 3c FJ",
        "RR                     | 11bJ 4444c NNNJ | RJ",
        "5b                     | 11bJ 4444c NNNJ | !",
      })
  void waits_ofARackOneAway_areTheKindsThatCompleteIt(String rack, String exposures, String kinds) {
    HandMeter meter = new HandMeter();
    meter.hold(TileText.rack(rack));
    List<Exposure> open = TileText.exposures(exposures == null ? "" : exposures);
    long expected = 0;
    if (!kinds.equals("!")) {
      for (int kind : TileText.rack(kinds).tiles()) {
        expected |= 1L << kind;
      }
    }
    assertThat(meter.waits(CARD.reach(open))).isEqualTo(expected);
  }

  @Test
  void least_withoutAHandLeft_isNone() {
    HandMeter meter = new HandMeter();
    meter.hold(TileText.rack("111b NNNN RRR"));
    Reach none = CARD.reach(TileText.exposures("444c"));
    assertThat(meter.least(none)).isEqualTo(HandMeter.NONE);
    assertThat(meter.least(none, 3)).isEqualTo(3);
    NearHands found = new NearHands();
    meter.nearest(none, 2, found);
    assertThat(found.count()).isZero();
    assertThat(found.least()).isEqualTo(HandMeter.NONE);
  }

  /** As in case EC-62: one flower held, the other seven seen, so the pair cannot be made. */
  @Test
  void hand_whoseLooseTilesAreGone_isDead() {
    Rack rack = TileText.rack("F 7777d 77b GG");
    assertThat(dead("T2", rack, Tile.FLOWER, 1)).isTrue();
    assertThat(dead("T2", rack, Tile.FLOWER, 2)).isFalse();
    assertThat(dead("T1", rack, Tile.FLOWER, 1)).isFalse();
  }

  /** As in case EC-52: six tiles of one kind need two jokers wherever these come from. */
  @Test
  void hand_thatNeedsMoreJokersThanCanBeHad_isDead() {
    Rack rack = TileText.rack("FFFFF 333c 000");
    assertThat(dead("T7", rack, Tile.JOKER, 2)).isFalse();
    assertThat(dead("T7", rack, Tile.JOKER, 1)).isTrue();
    assertThat(dead("T5", rack, Tile.JOKER, 2)).isFalse();
    assertThat(dead("T4", rack, Tile.JOKER, 0)).isFalse();
  }

  private static boolean dead(String line, Rack rack, int kind, int obtainable) {
    int[] counts = new int[Tile.KINDS];
    for (int at = 0; at < Tile.KINDS; at++) {
      counts[at] = at == kind ? obtainable : TileSet.USUAL.copies(at);
    }
    HandMeter meter = new HandMeter();
    meter.hold(rack);
    meter.obtainable(counts);
    return meter.dead(CARD.closed(), Integer.parseInt(line.substring(1)) - 1);
  }
}
