package org.tallywall.experiments.rack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileSet;

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
  void wants_jokersOnTheRack_standWhereMostIsLacking() {
    LineDistance.Nearest quints = nearest("NN 333b GG RR 0 JJJ", 1);

    // Held 2 of NNNNN, 3 of 33333b, GG: the pair of threes in another suit is lacking as well.
    assertThat(quints.away()).isEqualTo(4);
    assertThat(quints.natural().toString()).isEqualTo("33c");
    assertThat(quints.open().toString()).isEqualTo("3b N");
    assertThat(quints.wants().total()).isEqualTo(quints.away());
  }

  @Test
  void wants_lineWithoutJokers_isAllNatural() {
    LineDistance.Nearest strict = nearest("FFF 222b 44b 222c 4c JJ", 2);

    assertThat(strict.away()).isEqualTo(2);
    assertThat(strict.natural().toString()).isEqualTo("4c F");
    assertThat(strict.open().total()).isZero();
  }

  /** A property over 2,000 seeded racks: what is wanted is always as many tiles as are away. */
  @Test
  void wants_anyRack_isAsManyTilesAsAreAway() {
    RandomStream stream = new RandomStream(new StreamKey(11, 0, Purpose.RESAMPLING, 0, 0, 0));
    int[] tiles = TileSet.USUAL.tiles();
    for (int round = 0; round < 2_000; round++) {
      stream.shuffle(tiles, tiles.length);
      Rack rack = new Rack();
      for (int at = 0; at < 13 + round % 2; at++) {
        rack.add(tiles[at]);
      }
      for (LineDistance distance : lines.all(new RackQuestion("", rack, List.of()))) {
        LineDistance.Nearest nearest = distance.nearest().orElseThrow();
        assertThat(nearest.wants().total()).as(rack.toString()).isEqualTo(nearest.away());
      }
    }
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
