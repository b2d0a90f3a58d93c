package org.tallywall.experiments.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.strategies.catalog.Catalog;

/** The number of a step is the one that the page of the game has for it. */
@Tag("long")
class StepNumbersTest {
  private static final ConcreteHands HANDS =
      new ConcreteHands(CardFile.read(Path.of("cards", "saltmarsh-quay.json")).orThrow());

  @Test
  void stepAfterEvents_isTheOneThatThePageMakes() {
    for (TableRules rules :
        List.of(TableRules.STANDARD, TableRules.of(Map.of("charleston.first", "NONE")))) {
      for (int deal = 0; deal < 10; deal++) {
        GameRecord game = play(rules, deal);
        StepNumbers numbers = new StepNumbers(game);
        StepMaker maker =
            new StepMaker(
                game,
                HANDS.card(),
                SeatNames.FROM_EAST,
                new AimWords(HANDS, new TypedTiles()),
                Commentary.NONE);
        List<Step> steps = maker.steps();

        assertThat(numbers.after(0)).isEqualTo(1);
        assertThat(numbers.last()).isEqualTo(steps.size());
        for (int event = 0; event < game.events().size(); event++) {
          String kind = game.events().get(event).getClass().getSimpleName();
          Step step = steps.get(numbers.after(event + 1) - 1);
          assertThat(kind.toLowerCase(java.util.Locale.ROOT))
              .as("event %s: %s", event, step.title())
              .startsWith(
                  step.kind().equals("pass") && kind.equals("Courtesy") ? "c" : step.kind());
        }
      }
    }
  }

  private static GameRecord play(TableRules rules, int deal) {
    GameRecorder recorder = new GameRecorder();
    new Game(
            new TableSetup(HANDS, rules),
            java.util.stream.Stream.of("reckoner", "nearest", "random-legal", "nearest")
                .map(name -> Catalog.standard().type(name).orElseThrow().maker().get())
                .toList(),
            recorder)
        .play(Deal.of(4, deal, rules.tiles()));
    return recorder.record(
        new GameRecord.Header(
            "",
            4,
            deal,
            deal,
            "",
            -1,
            new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
            rules.switches(),
            List.of("a", "b", "c", "d")));
  }
}
