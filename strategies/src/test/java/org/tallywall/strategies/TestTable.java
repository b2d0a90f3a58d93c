package org.tallywall.strategies;

import java.util.List;
import java.util.Map;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;

/** A card, several tables of rules, and games on them, for tests of players. */
public final class TestTable {
  /** Seed of all games. */
  public static final long SEED = 60_606L;

  private static final String CARD =
      """
      {
        "card": "Card for tests of players",
        "families": [
          { "family": "Ladders", "lines": [
            { "tiles": "111x 222x 3333x 44x FF", "slide": "any", "value": 30 },
            { "tiles": "22x 333y 44x 555y FFFF", "slide": "any", "value": 25 },
            { "tiles": "11x 22x 33y 44y 55z 66z FF", "slide": "any", "value": 50,
              "concealed": true }
          ] },
          { "family": "Skips", "lines": [
            { "tiles": "222x 4444x 666y 8888y", "value": 25 },
            { "tiles": "111x 333x 55y 777z 999z", "value": 35, "concealed": true },
            { "tiles": "222x 444x 666x 888x 00", "value": 45, "jokers": false }
          ] },
          { "family": "Echoes", "lines": [
            { "tiles": "nnnnx nnny nnnz FFFF", "value": 30 },
            { "tiles": "nnnx DDDDx nnny DDDDy", "value": 25 }
          ] },
          { "family": "Vanes", "lines": [
            { "tiles": "NNNN EEE WWW SSSS", "value": 25 },
            { "tiles": "NEWS RRRR GGG 000", "value": 30 }
          ] },
          { "family": "Towers", "lines": [
            { "tiles": "11111x 2222x 33333x", "slide": "any", "value": 40 },
            { "tiles": "FFFFF nnnnx DDDDDy", "value": 40 }
          ] }
        ]
      }
      """;

  private TestTable() {}

  /** The hands of the card. */
  public static final ConcreteHands HANDS =
      new ConcreteHands(CardFile.json("players.json", CARD).orThrow());

  /** A card of lines given as objects in JSON. */
  public static ConcreteHands card(String... lines) {
    String text =
        "{ \"card\": \"Probe\", \"families\": [ { \"family\": \"Ladders\", \"lines\": [\n"
            + String.join(",\n", lines)
            + "\n] } ] }";
    Card card = CardFile.json("probe.json", text).orThrow();
    return new ConcreteHands(card);
  }

  /** Rules of five tables: the usual ones, and four with many switches set otherwise. */
  public static List<TableRules> rules() {
    return List.of(
        TableRules.STANDARD,
        TableRules.of(
            Map.of(
                "charleston.blind", "ALL_PASSES",
                "charleston.second", "COMPULSORY",
                "dead.calls", "AUTO",
                "claims.lineFit", "LENIENT",
                "wall.hot", "PAY_ALL_IF_UNACCOUNTED",
                "wall.lastSegment", 60)),
        TableRules.of(
            Map.of(
                "charleston.jokersMayPass",
                true,
                "charleston.stopTiming",
                "BEFORE_SEEING_FIRST_LEFT",
                "joker.discardClaimable",
                true,
                "claims.mahjongViaExchange",
                true,
                "tiles.jokers",
                12,
                "score.wallGame",
                5)),
        TableRules.of(
            Map.of(
                "charleston.second",
                "MAJORITY",
                "charleston.blindMax",
                1,
                "claims.priority",
                "TURN_ORDER_ONLY",
                "claims.minNaturalsFromRack",
                1,
                "joker.exchange",
                "OTHERS_ONLY",
                "joker.exchangePerTurn",
                1,
                "wall.finalDiscard.claim",
                "MAHJONG_ONLY",
                "win.autoBestLine",
                false,
                "win.mayDecline",
                false)),
        TableRules.of(
            Map.of(
                "charleston.first", "NONE",
                "joker.exchange", "OWN_ONLY",
                "joker.exchangeAfterClaim", false,
                "wall.cold", "NO_MAHJONG_CLAIM",
                "tiles.jokers", 0,
                "tiles.flowers", 12,
                "dead.calls", "AUTO",
                "dead.threeDead", "WALL",
                "score.diceDoubles", true)));
  }

  /** The rules by which a deal is played: one table after the other. */
  public static TableRules rulesOf(int deal) {
    return rules().get(deal % rules().size());
  }

  /** Plays a deal and writes it down. */
  public static GameRecord play(int deal, List<? extends Player> players) {
    return play(deal, players, rulesOf(deal));
  }

  /** The same by given rules. */
  public static GameRecord play(int deal, List<? extends Player> players, TableRules rules) {
    GameRecorder recorder = new GameRecorder();
    new Game(new TableSetup(HANDS, rules), players, recorder)
        .play(Deal.of(SEED, deal, rules.tiles()));
    return recorder.record(header(rules, deal));
  }

  private static GameRecord.Header header(TableRules rules, int deal) {
    return new GameRecord.Header(
        "players",
        SEED,
        deal,
        deal,
        "",
        -1,
        new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
        rules.switches(),
        List.of("a", "b", "c", "d"));
  }
}
