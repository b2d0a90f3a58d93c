package org.tallywall.strategies.playout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.sheet.SheetView;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.player.NearestPlayer;

/** What was set is answered once; then the player behind answers. */
class FirstAnswerTest {
  private static final RandomStream RANDOM =
      new RandomStream(new StreamKey(1, 0, Purpose.DECISION, 0, 0, 0));

  private final FirstAnswer player = new FirstAnswer(new NearestPlayer());

  private static SheetView view(String sheet) {
    TableSetup setup = new TableSetup(TestTable.HANDS, TableRules.STANDARD);
    return PositionSheet.of("test.txt", sheet, setup).view();
  }

  private static final String TURN =
      "seat 0\nmoment turn\nwall 60\nrack 1122334455667b W\ndiscards N\n";

  @Test
  void answersSet_areGivenOnceInTheirOrder() {
    SheetView view = view(TURN);
    TurnChoice usual = player.turn(view, RANDOM);
    TurnChoice first = TurnChoice.discard(TileText.tile("1b"));
    TurnChoice second = TurnChoice.discard(TileText.tile("2b"));
    player.turn(first);
    player.turn(second);
    assertThat(player.turn(view, RANDOM)).isEqualTo(first);
    assertThat(player.turn(view, RANDOM)).isEqualTo(second);
    assertThat(player.turn(view, RANDOM)).isEqualTo(usual).isNotIn(first, second);
  }

  /** Somebody else may win on the tile: what was to follow the claim is then no longer asked. */
  @Test
  void turnAfterAClaim_isForgottenWhereTheClaimWasNotGranted() {
    SheetView view = view(TURN);
    TurnChoice usual = player.turn(view, RANDOM);
    player.claim(ClaimChoice.nothing());
    player.turn(TurnChoice.discard(TileText.tile("1b")));
    assertThat(player.claim(view, RANDOM)).isEqualTo(ClaimChoice.nothing());
    assertThat(player.turn(view, RANDOM)).isEqualTo(usual);
  }

  @Test
  void answersCleared_areNotGiven() {
    SheetView view = view(TURN);
    player.turn(TurnChoice.discard(TileText.tile("1b")));
    player.stops(true);
    player.courtesyNumber(3);
    player.clear();
    assertThat(player.turn(view, RANDOM)).isNotEqualTo(TurnChoice.discard(TileText.tile("1b")));
    SheetView passing = view("seat 1\nmoment stop\nrack 112233445566b W\n");
    NearestPlayer plain = new NearestPlayer();
    assertThat(player.stops(passing, RANDOM)).isEqualTo(plain.stops(passing, RANDOM));
    assertThat(player.courtesyNumber(passing, RANDOM))
        .isEqualTo(plain.courtesyNumber(passing, RANDOM));
  }

  @Test
  void answersInThePasses_areThoseSet() {
    SheetView view = view("seat 1\nmoment pass right-1\nrack 112233445566b W\n");
    int[] tiles = TileText.rack("112b").tiles();
    player.pass(PassChoice.of(tiles));
    player.stops(true);
    player.courtesyNumber(2);
    player.courtesyTiles(new int[] {0, 1});
    assertThat(player.pass(view, PassStep.RIGHT_1, RANDOM).own()).isEqualTo(tiles);
    assertThat(player.stops(view, RANDOM)).isTrue();
    assertThat(player.courtesyNumber(view, RANDOM)).isEqualTo(2);
    assertThat(player.courtesyTiles(view, 2, RANDOM)).containsExactly(0, 1);
    assertThat(player.pass(view, PassStep.RIGHT_1, RANDOM).own()).isNotEqualTo(tiles);
  }
}
