package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is spoiled was right before: otherwise nothing behind the first check would ever be met. */
@Tag("long")
class SeedsTest {
  @TempDir Path folder;

  @Test
  void unspoiled_areAccepted() {
    Seeds seeds = new Seeds(folder.resolve("seeds"));
    List<Attack> right = new ArrayList<>();
    String card = Attack.HERE + "/card.json";
    for (JsonTree tree : seeds.cards) {
      right.add(attack("card.json", tree.toString(), "card", "check", card));
    }
    for (String table : seeds.cardTables) {
      right.add(attack("card.csv", table, "card", "check", Attack.HERE + "/card.csv"));
    }
    for (Scene scene : seeds.scenes) {
      Attack ask =
          attack(
              "scene.txt",
              scene.text(),
              "ask",
              Attack.HERE + "/scene.txt",
              "--card",
              card,
              "--player",
              Attack.HERE + "/player.json",
              "--rules",
              Attack.HERE + "/rules.json");
      right.add(
          ask.with("card.json", Plant.text(scene.card()))
              .with("player.json", Plant.text(TinyStudies.PLAYER))
              .with("rules.json", Plant.text(TinyStudies.RULES)));
    }
    CommandSource commands = new CommandSource(seeds);
    CommandSource.COMMANDS.forEach(command -> right.add(commands.right(command)));
    try (Lane lane = new Lane(folder)) {
      for (Attack attack : right) {
        Outcome outcome = lane.put(attack);
        boolean refusesResults = attack.words().contains("fail");
        assertThat(outcome.code())
            .as(attack.command() + "\n" + outcome.err().text() + attack.shown())
            .isIn(refusesResults ? List.of(2) : List.of(0, 1));
      }
    }
  }

  private static Attack attack(String file, String text, String... words) {
    return Attack.of("right", Map.of(file, Plant.text(text)), words);
  }
}
