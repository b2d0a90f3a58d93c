package org.tallywall.experiments.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.reason.Missing;

/** Distances of racks from lines, and what is still wanted. */
class NearestLinesTest {
  private static final String CARD =
      """
      { "card": "Cordage test card", "families": [ { "family": "Knots", "lines": [
        { "tiles": "1111x 22y 333x 444z 55y", "slide": "any", "value": 25 },
        { "tiles": "NNNNN 33x 33333y GG", "value": 40 },
        { "tiles": "FFFF 222x 44x 222y 44y", "value": 35, "jokers": false } ] } ] }
      """;

  private final Card card = CardFile.json("card.json", CARD).orThrow();
  private final NearestLines lines = new NearestLines(card);

  @Test
  void missing_jokersOnTheRack_leaveEveryOpenTileThatHelps() {
    Missing quints = nearest("NN 333b GG RR 0 JJJ", 1).missing();

    // Held 2 of NNNNN, 3 of 33333b, GG: the pair of threes in another suit is lacking as well.
    assertThat(text(quints.natural())).isEqualTo("33c");
    assertThat(text(quints.open())).isEqualTo("3b NN JJ");
    assertThat(quints.filled()).isEqualTo(3);
    assertThat(text(quints.tiles())).isEqualTo("3b 33c NN JJ");
  }

  @Test
  void missing_jokersThatFillAllOpenPlaces_leavesWhatMustBeNatural() {
    Missing pairs = nearest("NNNN 3333b GG 9d 8d JJ", 1).missing();

    assertThat(text(pairs.natural())).isEqualTo("33c");
    assertThat(pairs.open()).isEmpty();
    assertThat(pairs.filled()).isZero();
  }

  @Test
  void missing_lineWithoutJokers_isAllNatural() {
    LineDistance.Nearest strict = nearest("FFF 222b 44b 222c 4c JJ", 2);

    assertThat(strict.away()).isEqualTo(2);
    assertThat(text(strict.missing().natural())).isEqualTo("4c F");
    assertThat(strict.missing().open()).isEmpty();
    assertThat(strict.missing().filled()).isZero();
  }

  /**
   * A property over 2,000 seeded racks with 0 to 3 jokers, some with an exposure: the tiles missing
   * are those after which the rack is closer, found by adding every tile in turn, and they are as
   * many as it is away, jokers taken off.
   */
  @Test
  void missing_anyRack_isEveryTileThatBringsItCloser() {
    HandMeter meter = new HandMeter();
    ConcreteHands hands = new ConcreteHands(card);
    RandomStream stream = new RandomStream(new StreamKey(11, 0, Purpose.RESAMPLING, 0, 0, 0));
    List<Exposure> shown = List.of(Exposure.of(TileText.tile("4d"), 4, 1));
    int[] tiles = TileSet.USUAL.tiles();
    int withJokersLeft = 0;
    for (int round = 0; round < 2_000; round++) {
      stream.shuffle(tiles, tiles.length);
      List<Exposure> exposures = round % 3 == 0 ? shown : List.of();
      Rack rack = rack(tiles, 13 - (exposures.isEmpty() ? 0 : 4), round % 4);
      Reach reach = hands.reach(exposures);
      for (LineDistance distance : lines.all(new RackQuestion("", rack, exposures))) {
        if (distance.nearest().isEmpty()) {
          continue;
        }
        LineDistance.Nearest nearest = distance.nearest().orElseThrow();
        Missing missing = nearest.missing();
        int hand = hand(reach, distance.line(), nearest.example());
        meter.hold(rack);
        assertThat(meter.away(reach, hand)).isEqualTo(nearest.away());
        Set<Integer> closer = new TreeSet<>();
        for (int kind = 0; kind < Tile.KINDS; kind++) {
          Rack more = rack.copy();
          more.add(kind);
          meter.hold(more);
          boolean there = rack.held(kind) < TileSet.USUAL.copies(kind);
          if (there && meter.away(reach, hand) < nearest.away()) {
            closer.add(kind);
          }
        }
        Set<Integer> said = new TreeSet<>(missing.tiles());
        if (!missing.open().isEmpty()) {
          said.add(Tile.JOKER);
        }
        String why = rack + " / " + exposures + " for " + nearest.example();
        assertThat(said).as(why).isEqualTo(closer);
        assertThat(missing.tiles().size() - missing.filled()).as(why).isEqualTo(nearest.away());
        assertThat(missing.filled()).as(why).isIn(0, rack.jokers());
        withJokersLeft += missing.filled() > 0 ? 1 : 0;
      }
    }
    assertThat(withJokersLeft).isGreaterThan(1_000);
  }

  private static int hand(Reach reach, Line line, ConcreteHand example) {
    for (int at = 0; at < reach.size(); at++) {
      if (reach.hands().line(reach.line(at)).id().equals(line.id())
          && reach.hand(at).equals(example)) {
        return at;
      }
    }
    throw new AssertionError(example);
  }

  /** The first naturals, and some jokers. */
  private static Rack rack(int[] tiles, int size, int jokers) {
    Rack rack = new Rack();
    rack.add(Tile.JOKER, jokers);
    for (int at = 0; rack.total() < size; at++) {
      if (tiles[at] != Tile.JOKER) {
        rack.add(tiles[at]);
      }
    }
    return rack;
  }

  private static String text(List<Integer> kinds) {
    Rack rack = new Rack();
    kinds.forEach(rack::add);
    return rack.toString();
  }

  @Test
  void sorted_equalDistance_moreWaysComeFirst() {
    List<LineDistance> sorted = lines.sorted(RackQuestion.read("67788b 689d WWSSR"));

    assertThat(sorted).extracting(distance -> distance.line().id()).startsWith("K1");
  }

  @Test
  void question_twoSlashes_isRefused() {
    assertThatThrownBy(() -> RackQuestion.read("11b / 333c / 444d"))
        .isInstanceOf(NotationException.class)
        .hasMessageContaining("one slash");
  }

  @Test
  void question_faultBehindTheSlash_isPlacedInTheRow() {
    assertThatThrownBy(() -> RackQuestion.read("11b 22b / 3c"))
        .hasMessageContaining("at character 11");
  }

  private LineDistance.Nearest nearest(String rack, int line) {
    return lines.all(RackQuestion.read(rack)).get(line).nearest().orElseThrow();
  }
}
