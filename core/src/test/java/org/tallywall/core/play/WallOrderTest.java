package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Every tile is drawn once; with rows of their own seats do not disturb each other. */
class WallOrderTest {
  private static final int FROM = 61;
  private static final int SIZE = 70;

  private static List<Integer> drawn(boolean ownRows, int... seats) {
    WallOrder order = new WallOrder();
    order.begin(FROM, SIZE, ownRows);
    List<Integer> places = new ArrayList<>();
    for (int seat : seats) {
      places.add(order.draw(seat));
    }
    assertThat(order.taken()).isEqualTo(FROM + seats.length);
    return places;
  }

  @Test
  void atTheTable_tilesAreDrawnInOrderWhoeverDraws() {
    assertThat(drawn(false, 0, 1, 3, 3, 2)).containsExactly(61, 62, 63, 64, 65);
  }

  @Test
  void ownRows_aSkippedTurnLeavesTheDrawsOfTheOthersAsTheyWere() {
    assertThat(drawn(true, 0, 1, 2, 3, 0, 1, 2, 3)).containsExactly(61, 62, 63, 64, 65, 66, 67, 68);
    assertThat(drawn(true, 0, 2, 3, 0, 2, 3)).containsExactly(61, 63, 64, 65, 67, 68);
  }

  @Test
  void ownRows_whoHasUsedUpTheRowDrawsTheFirstThatIsLeft() {
    assertThat(drawn(true, 1, 1, 1, 1, 0, 0, 3)).containsExactly(62, 66, 61, 63, 65, 69, 64);
  }

  @Test
  void ownRows_everyTileIsDrawnOnce() {
    int[] seats = IntStream.range(0, SIZE - FROM).map(at -> at * at % 3).toArray();
    assertThat(drawn(true, seats))
        .containsExactlyInAnyOrderElementsOf(IntStream.range(FROM, SIZE).boxed().toList());
  }
}
