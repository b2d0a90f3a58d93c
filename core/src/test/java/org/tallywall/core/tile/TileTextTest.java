package org.tallywall.core.tile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/** Racks and exposures read and printed; what is printed must be read as the same tiles. */
class TileTextTest {
  private final RandomStream random =
      new RandomStream(new StreamKey(20_261, 0, Purpose.RESAMPLING, 0, 0, 0));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "113b 99d S RG0 FF JJJ | 113b 99d S RG0 FF JJJ",
        "20b | 2b 0",
        "02b | 2b 0",
        "2b0 | 2b 0",
        "2048d | 248d 0",
        "F,J , 3c,,1c | 13c F J",
        "JFSWENG0R | NEWS RG0 F J",
        "9b8b7b | 789b",
      })
  void rack_writtenInAnyWay_isPrintedInTheFixedOrder(String written, String printed) {
    assertThat(TileText.rack(written)).hasToString(printed);
  }

  @Test
  void rack_runTogether_isTheExampleOfTheNotation() {
    assertThat(TileText.rack("113b 99d S RG0 FF JJJ").tiles())
        .containsExactly(
            0,
            0,
            2,
            26,
            26,
            Tile.SOUTH,
            Tile.RED,
            Tile.GREEN,
            Tile.SOAP,
            Tile.FLOWER,
            Tile.FLOWER,
            Tile.JOKER,
            Tile.JOKER,
            Tile.JOKER);
  }

  @Test
  void rack_printedAndReadAgain_isTheSameForTenThousandRacks() {
    int[] wall = TileSet.USUAL.tiles();
    for (int deal = 0; deal < 10_000; deal++) {
      random.shuffle(wall, wall.length);
      Rack rack = new Rack();
      int size = random.below(15);
      for (int at = 0; at < size; at++) {
        rack.add(wall[at]);
      }
      assertThat(TileText.rack(rack.toString())).isEqualTo(rack);
      assertThat(TileText.rack(scrambled(wall, size))).isEqualTo(rack);
    }
  }

  private String scrambled(int[] tiles, int size) {
    StringBuilder text = new StringBuilder();
    for (int at = 0; at < size; at++) {
      text.append(Tile.symbol(tiles[at])).append(List.of("", " ", ",", " , ").get(random.below(4)));
    }
    return text.toString();
  }

  @Test
  void exposures_printedAndReadAgain_areTheSame() {
    List<Exposure> all = new ArrayList<>();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      for (int size = 3; size <= 6; size++) {
        for (int jokers = 0; jokers < size; jokers++) {
          if (size - jokers <= TileSet.USUAL.copies(kind)) {
            all.add(new Exposure(kind, size, jokers));
          }
        }
      }
    }
    for (Exposure exposure : all) {
      assertThat(TileText.exposures(exposure.toString())).containsExactly(exposure);
    }
    String row = "333cJ FFFJ, 0000 NJJJJJ";
    assertThat(TileText.exposures(row))
        .containsExactly(
            new Exposure(11, 4, 1),
            new Exposure(Tile.FLOWER, 4, 1),
            new Exposure(Tile.SOAP, 4, 0),
            new Exposure(Tile.NORTH, 6, 5));
    assertThat(TileText.exposures("  ")).isEmpty();
  }

  @Test
  void redeemed_exposure_hasOneNaturalMore() {
    assertThat(new Exposure(11, 4, 1).redeemed()).hasToString("3333c");
  }
}
