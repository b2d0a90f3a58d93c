package org.tallywall.core.play;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.rules.TableRules;

/** A table for many games in tests: an easy card, and players of two kinds in changing seats. */
public final class MixedTable {
  private static final String CARD =
      """
      {
        "card": "Easy card for tests",
        "families": [
          { "family": "Runs", "lines": [
            { "tiles": "11x 222x 3333x 444x 55x", "slide": "any", "value": 30 },
            { "tiles": "FFFF 111x 222y 3333z", "slide": "any", "value": 25 },
            { "tiles": "FF 555x 66y 777x 8888z", "slide": "any", "value": 35, "concealed": true }
          ] },
          { "family": "Likes", "lines": [
            { "tiles": "nnnnx nnnny nnnnz FF", "value": 30 },
            { "tiles": "222x 444x 66y 888y 000", "value": 25 }
          ] },
          { "family": "Honors", "lines": [
            { "tiles": "NNNN EEE WWW SSSS", "value": 25 },
            { "tiles": "RRRR GGGG 0000 FF", "value": 30 },
            { "tiles": "FFFFF NEWS RRRRR", "value": 40 }
          ] },
          { "family": "Hard ones", "lines": [
            { "tiles": "FF 11x 33x 55x 77x 99x 00", "value": 50, "concealed": true },
            { "tiles": "111x 333x 555x 777y 99y", "value": 45, "jokers": false }
          ] }
        ]
      }
      """;

  private MixedTable() {}

  /** The card. */
  public static Card card() {
    return CardFile.json("easy.json", CARD).orThrow();
  }

  /** Rules of many tables, each with several switches away from their defaults. */
  public static List<TableRules> rules() {
    return List.of(
        TableRules.STANDARD,
        TableRules.of(
            Map.of(
                "wall.hot", "PAY_ALL_IF_UNACCOUNTED",
                "wall.lastSegment", 60,
                "charleston.blind", "ALL_PASSES",
                "charleston.second", "COMPULSORY",
                "dead.calls", "AUTO",
                "score.oneHandRule", true)),
        TableRules.of(
            Map.of(
                "claims.lineFit", "LENIENT",
                "dead.calls", "AUTO",
                "claims.mahjongViaExchange", true,
                "joker.discardClaimable", true,
                "charleston.stopTiming", "BEFORE_SEEING_FIRST_LEFT",
                "charleston.stopReveal", "ALL",
                "score.wallGame", 5)),
        TableRules.of(
            Map.of(
                "win.mayDecline", false,
                "claims.priority", "TURN_ORDER_ONLY",
                "joker.exchangePerTurn", 1,
                "joker.exchange", "OTHERS_ONLY",
                "wall.finalDiscard.claim", "MAHJONG_ONLY",
                "charleston.second", "MAJORITY",
                "charleston.blindMax", 1,
                "charleston.courtesyReveal", "LOWER_ONLY")),
        TableRules.of(
            Map.of(
                "wall.cold",
                "NO_MAHJONG_CLAIM",
                "tiles.jokers",
                12,
                "tiles.flowers",
                12,
                "claims.minNaturalsFromRack",
                1,
                "joker.exchangeAfterClaim",
                false,
                "win.exchangePaidAs",
                "SINGLE",
                "dead.threeDead",
                "WALL",
                "charleston.jokersMayPass",
                true)),
        TableRules.of(
            Map.of(
                "wall.cold",
                "NO_CLAIM",
                "wall.lastSegment",
                40,
                "charleston.first",
                "NONE",
                "win.autoBestLine",
                false,
                "joker.exchange",
                "OWN_ONLY",
                "score.diceDoubles",
                true,
                "score.jokerlessExcludes",
                "NONE",
                "claims.losingClaimsPublic",
                false,
                "tiles.jokers",
                11)));
  }

  /** Four new players; the bits of the number say who is greedy. */
  public static List<Player> players(int number) {
    return IntStream.range(0, 4)
        .mapToObj(seat -> (number >> seat & 1) == 0 ? (Player) new GreedyPlayer() : new AnyMove())
        .toList();
  }
}
