package org.tallywall.experiments.manners;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.TileText;

/** Each rule in a position that it meets and in one beside it; distances counted by hand. */
class SlipRulesTest {
  private static final String WINDS = "NNNN EEE WWW SSSS";
  private static final String ODDS = "111x 3333x 555x 7777x";
  private static final String FLOWERS = "FFFF 222x 444x 6666x";
  private static final String DRAGON = "NNNN EEE 999x RRRR";

  private static final TableSetup SETUP = setup(WINDS, ODDS, FLOWERS, DRAGON);

  private static TableSetup setup(String... lines) {
    String typed =
        String.join(
            ", ",
            Arrays.stream(lines)
                .map(line -> "{ \"tiles\": \"" + line + "\", \"value\": 25 }")
                .toList());
    String json =
        "{ \"card\": \"Slips\", \"families\": [ { \"family\": \"A\", \"lines\": [ "
            + typed
            + " ] } ] }";
    return new TableSetup(
        new ConcreteHands(CardFile.json("slips.json", json).orThrow()), TableRules.STANDARD);
  }

  private static List<Slip> slips(Move move, String... lines) {
    return slips(SETUP, move, lines);
  }

  private static List<Slip> slips(TableSetup setup, Move move, String... lines) {
    boolean passing = lines[0].startsWith("moment   pass");
    String text = "seat     " + (passing ? 1 : 0) + "\n" + String.join("\n", lines) + "\n";
    return new SlipFinder().slips(PositionSheet.of("slips.txt", text, setup).view(), move);
  }

  private static List<Slip> passing(String rack, String... tiles) {
    return slips(pass(tiles), "moment   pass right-1", "rack     " + rack);
  }

  private static Move pass(String... tiles) {
    return new Move.Pass(Arrays.stream(tiles).map(TileText::tile).toList(), 0);
  }

  @Test
  void pair_toOnePlayer_unlessTheRackIsAllPairs() {
    assertThat(passing("222444b 9c 55d NNEE", "5d", "5d", "9c")).containsExactly(Slip.PAIR_PASSED);
    assertThat(passing("222444b 9c 55d NNEE", "5d", "N", "9c")).isEmpty();
    assertThat(passing("22444b 99c 55d NNEE", "5d", "5d", "9c")).isEmpty();
  }

  @Test
  void honors_threeDifferentOfAKind() {
    assertThat(passing("222444b 9c 5d NEWRG", "N", "E", "W")).containsExactly(Slip.HONORS_PASSED);
    assertThat(passing("222444b 9c 5d EWRG0", "R", "G", "0")).containsExactly(Slip.HONORS_PASSED);
    assertThat(passing("222444b 9c 5d NEWRG", "N", "E", "R")).isEmpty();
  }

  @Test
  void flower_whileATileStaysThatNoNearestHandUses() {
    assertThat(passing("222444b 9c 5d NE R FF", "N", "E", "F")).containsExactly(Slip.FLOWER_PASSED);
    assertThat(passing("222444666b RG FF", "R", "G", "F")).isEmpty();
    String rack = "rack     222444b 9c 5d NE R FF";
    assertThat(slips(setup(WINDS, ODDS), pass("N", "E", "F"), "moment   pass right-1", rack))
        .isEmpty();
  }

  @Test
  void call_fromSixAway() {
    String far = "rack     22b 13579c 1357d RG";
    String near = "rack     22444666b NEW FF";
    Move call = new Move.Claim(3, 0);
    assertThat(slips(call, "moment   offer 2b from 3", "wall     90", far))
        .containsExactly(Slip.FAR_CALL);
    assertThat(slips(call, "moment   offer 2b from 3", "wall     90", near)).isEmpty();
  }

  /** Winds: 8 tiles and a joker, 5 away; after 22J flowers are 9 away. Then 4 away becomes 3. */
  @Test
  void lastJoker_forACallThatBringsNothing() {
    assertThat(
            slips(
                new Move.Claim(3, 1),
                "moment   offer 2b from 3",
                "wall     90",
                "rack     246b 9d NNNEEEWW J"))
        .containsExactly(Slip.EMPTY_CALL);
    assertThat(
            slips(
                new Move.Claim(3, 1),
                "moment   offer 2b from 3",
                "wall     90",
                "rack     246b NNNEEEWW JJ"))
        .isEmpty();
    assertThat(
            slips(
                new Move.Claim(3, 1),
                "moment   offer W from 3",
                "wall     90",
                "rack     2b 39d NNNEEEWSS J"))
        .isEmpty();
  }

  /** 4 away becomes 3; then 2 becomes 1. */
  @Test
  void twoJokers_besideOneTile_unlessOneAwayAfterwards() {
    Move call = new Move.Claim(4, 2);
    String offer = "moment   offer S from 3";
    assertThat(slips(call, offer, "wall     90", "rack     2b 39d NNNEEEWS JJ"))
        .containsExactly(Slip.JOKERS_BESIDE_ONE);
    assertThat(slips(call, offer, "wall     90", "rack     2b NNNNEEEWWS JJ")).isEmpty();
    assertThat(slips(new Move.Claim(4, 1), offer, "wall     90", "rack     2b 39d NNNEEESS JJ"))
        .isEmpty();
  }

  /** Seat 1 shows the north winds: S may serve her, G and 8d cannot. */
  @Test
  void hotter_whileAColderUselessTileIsHeld() {
    String[] seen = {
      "moment   turn drew S", "wall     80", "exposed  1 NNNN", "rack     222444666b 8d S G FF"
    };
    assertThat(slips(new Move.Discard(TileText.tile("S")), seen))
        .containsExactly(Slip.HOTTER_THROWN);
    assertThat(slips(new Move.Discard(TileText.tile("G")), seen)).isEmpty();
    String[] around = Arrays.copyOf(seen, seen.length + 1);
    around[seen.length] = "discards in order 3:S";
    assertThat(slips(new Move.Discard(TileText.tile("S")), around)).isEmpty();
    seen[2] = "exposed  1 111c";
    assertThat(slips(new Move.Discard(TileText.tile("S")), seen)).isEmpty();
  }

  @Test
  void broken_lateAndForNoReason() {
    Move breaks = new Move.Discard(TileText.tile("2b"));
    String rack = "rack     222444666b R FFFF";
    assertThat(slips(breaks, "moment   turn drew R", "wall     12", rack))
        .containsExactly(Slip.BROKEN_LATE);
    assertThat(slips(breaks, "moment   turn drew R", "wall     13", rack)).isEmpty();
    assertThat(
            slips(
                new Move.Discard(TileText.tile("R")), "moment   turn drew R", "wall     12", rack))
        .isEmpty();
    assertThat(
            slips(breaks, "moment   turn drew R", "wall     12", "exposed  1 NNNN EEE 999d", rack))
        .isEmpty();
    assertThat(slips(breaks, "moment   turn drew R", "wall     12", "exposed  1 NNNN EEE", rack))
        .containsExactly(Slip.BROKEN_LATE);
  }
}
