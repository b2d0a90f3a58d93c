package org.tallywall.experiments.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.TileText;

/** Which tiles a seat let go by with the rack that it has now. */
class ThrownTest {
  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("scenes/heron-reach/card.json")).orThrow()),
          TableRules.STANDARD);

  private static Thrown thrown(String text) {
    return new Thrown(PositionSheet.of("typed", text, SETUP).view());
  }

  private static boolean wentBy(Thrown thrown, int seat, String tile) {
    return thrown.wentBy(seat, TileText.rack(tile).tiles()[0]);
  }

  /** Seat 0 is on turn; since seat 1 threw its N, seats 2 and 3 threw E and S. */
  @Test
  void aTurn_countsWhatWasThrownSinceEachSeatsLast() {
    Thrown thrown =
        thrown(
            "seat 0\nmoment turn\nwall 95\nrack 1234b 1234c 1234d NF\n"
                + "discards in order 0:9d 1:N 2:E 3:S\n");

    assertThat(wentBy(thrown, 1, "N")).isTrue();
    assertThat(wentBy(thrown, 1, "E")).isTrue();
    assertThat(wentBy(thrown, 1, "S")).isTrue();
    assertThat(wentBy(thrown, 1, "9d")).isFalse();
    assertThat(wentBy(thrown, 3, "S")).isTrue();
    assertThat(wentBy(thrown, 3, "E")).isFalse();
    assertThat(wentBy(thrown, 2, "N")).isFalse();
    assertThat(thrown.threw(1, TileText.rack("N").tiles()[0])).isTrue();
    assertThat(thrown.threw(1, TileText.rack("S").tiles()[0])).isFalse();
  }

  /** The tile on offer is not settled for those who may still claim it. */
  @Test
  void anOffer_isSettledForItsThrowerAlone() {
    Thrown thrown =
        thrown(
            "seat 0\nmoment offer S from 3\nwall 95\nrack 1234b 1234c 1234d N\n"
                + "discards in order 0:9d 1:N 2:E\n");

    assertThat(wentBy(thrown, 3, "S")).isTrue();
    assertThat(wentBy(thrown, 1, "S")).isFalse();
    assertThat(wentBy(thrown, 1, "E")).isTrue();
    assertThat(wentBy(thrown, 3, "E")).isFalse();
  }

  @Test
  void discardsWithoutOrder_tellNothing() {
    Thrown thrown =
        thrown("seat 0\nmoment turn\nwall 95\nrack 1234b 1234c 1234d NF\ndiscards 9d NES\n");

    assertThat(wentBy(thrown, 1, "N")).isFalse();
    assertThat(thrown.threw(1, TileText.rack("N").tiles()[0])).isFalse();
  }
}
