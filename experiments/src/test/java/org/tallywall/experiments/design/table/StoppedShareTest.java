package org.tallywall.experiments.design.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.experiments.tally.TallyListener;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.strategies.player.NearestPlayer;

/** Passes that stop are a share of the games in which somebody could stop them, not of all. */
class StoppedShareTest {
  private static final String CARD =
      """
      { "card": "Bollard test card", "families": [ { "family": "Ladders", "lines": [
        { "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 } ] } ] }
      """;

  /** Twelve games are asked of their own; 8 questions more, of which 5 stop, are put beside. */
  @Test
  void stopped_isTheShareOfGamesThatWereAsked() {
    TableSetup setup =
        new TableSetup(
            new ConcreteHands(CardFile.json("card", CARD).orThrow()), TableRules.STANDARD);
    TableTally tally = new TableTally(setup);
    TallyListener listener = new TallyListener();
    listener.count(tally, 15);
    List<NearestPlayer> four =
        List.of(new NearestPlayer(), new NearestPlayer(), new NearestPlayer(), new NearestPlayer());
    Game game = new Game(setup, List.copyOf(four), listener);
    for (long deal = 0; deal < 12; deal++) {
      game.play(Deal.of(3, deal, setup.rules().tiles()));
      tally.endDeal();
    }
    long before = tally.passes().stopped();
    for (int more = 0; more < 8; more++) {
      listener.stopAsked(more < 5 ? 1 : 0);
    }

    List<String> row =
        CsvWriter.text(Overall.of(tally, 0.95))
            .lines()
            .map(line -> List.of(line.split(",", -1)))
            .filter(cells -> cells.get(0).equals("stopped"))
            .findFirst()
            .orElseThrow();
    Interval exact = new Proportion(before + 5, 20).clopperPearson(0.95);
    assertThat(tally.games()).isEqualTo(12);
    assertThat(row.get(2)).isEqualTo("20");
    assertThat(row.subList(4, 7).stream().map(Double::parseDouble))
        .containsExactly((before + 5) / 20.0, exact.low(), exact.high());
  }
}
