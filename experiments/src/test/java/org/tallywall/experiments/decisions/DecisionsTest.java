package org.tallywall.experiments.decisions;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.NotedPlayer;
import org.tallywall.core.sheet.SheetWriter;
import org.tallywall.strategies.catalog.Catalog;

/** A recorded game is gone through again, decision by decision, as it was played. */
class DecisionsTest {
  private static final ConcreteHands HANDS =
      new ConcreteHands(CardFile.read(Path.of("cards", "saltmarsh-quay.json")).orThrow());
  private static final long SEED = 11;

  private static final Map<String, TableRules> RULES =
      Map.of(
          "usual",
          TableRules.STANDARD,
          "early",
          TableRules.of(
              Map.of(
                  "charleston.stopTiming",
                  "BEFORE_SEEING_FIRST_LEFT",
                  "charleston.blind",
                  "ALL_PASSES",
                  "win.autoBestLine",
                  false,
                  "dead.calls",
                  "AUTO",
                  "claims.lineFit",
                  "LENIENT",
                  "joker.discardClaimable",
                  true)));

  private final List<Decision> made = new ArrayList<>();

  @ParameterizedTest
  @ValueSource(strings = {"usual", "early"})
  void decisions_ofARecord_areThoseThatWereMade(String rules) {
    TableRules table = RULES.get(rules);
    for (int deal = 0; deal < 12; deal++) {
      made.clear();
      GameRecord game = play(table, deal);
      List<Decision> again = Decisions.of(game, HANDS).orElseThrow();

      assertThat(again).hasSameSizeAs(made);
      for (int at = 0; at < made.size(); at++) {
        Decision decision = again.get(at);
        assertThat(plain(decision)).isEqualTo(plain(made.get(at)));
        if (!decision.lost()) {
          assertThat(decision.move()).isEqualTo(made.get(at).move());
        }
      }
    }
  }

  @Test
  void game_ofOtherLuck_isNotTakenForThis() {
    GameRecord game = play(RULES.get("early"), 1);
    List<GameEvent> events = new ArrayList<>(game.events());
    events.remove(events.size() - 1);
    GameRecord other = new GameRecord(game.header(), game.wall(), game.dice(), events, game.end());

    assertThat(Decisions.of(game, HANDS)).isPresent();
    assertThat(Decisions.of(other, HANDS)).isEmpty();
  }

  private static String plain(Decision decision) {
    return decision.events() + " " + decision.moment() + "\n" + decision.sheet();
  }

  private GameRecord play(TableRules rules, int deal) {
    List<Player> players = new ArrayList<>();
    for (String name : List.of("reckoner", "random-legal", "nearest", "random-legal")) {
      players.add(
          new NotedPlayer(
              Catalog.standard().type(name).orElseThrow().maker().get(),
              (view, moment, move) ->
                  made.add(
                      new Decision(
                          (int) view.events(),
                          view.seat(),
                          moment,
                          move,
                          false,
                          SheetWriter.text(view, moment)))));
    }
    GameRecorder recorder = new GameRecorder();
    new Game(new TableSetup(HANDS, rules), players, recorder)
        .play(Deal.of(SEED, deal, rules.tiles()));
    return recorder.record(
        new GameRecord.Header(
            "",
            SEED,
            deal,
            deal,
            "",
            -1,
            new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
            rules.switches(),
            List.of("a", "b", "c", "d")));
  }
}
