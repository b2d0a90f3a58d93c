package org.tallywall.experiments.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Trying choices out talks the player out of hardly any scene that a watchful player must pass,
 * with 20 seeds and under all six exchanges of suits. Fewer playouts than usual say so more loudly.
 *
 * <p>Two it gets wrong: it lays two jokers open beside a tile of which it holds no other, and
 * throws the tile that ends the game on every hand of a player with three exposures.
 */
class RolloutScenesTest {
  private static final PlayerSpec ROLLOUT =
      new PlayerSpec(
          Catalog.standard().type("rollout").orElseThrow(),
          Map.of("rollout.playouts", new BigDecimal("400")));

  private static final Set<String> WRONG =
      Set.of("leave-the-west-without-a-natural", "refuse-the-red-that-ends-it");

  @ParameterizedTest
  @Tag("long")
  @CsvSource({
    "scenes/heron-reach, scenes/heron-reach/card.json",
    "scenes/heron-reach-further, scenes/heron-reach/card.json",
    "scenes/saltmarsh-quay, cards/saltmarsh-quay.json"
  })
  void scenesThatNameWatchful_arePassedButForTwo(Path folder, Path card) {
    Scenes scenes = Scenes.of(CardFile.read(card).orThrow(), folder);
    List<String> named =
        scenes.sheets().stream()
            .filter(sheet -> sheet.players().contains("watchful"))
            .map(PositionSheet::scene)
            .toList();
    assertThat(named).isNotEmpty();
    assertThat(scenes.mark(ROLLOUT::make))
        .filteredOn(mark -> named.contains(mark.scene()))
        .hasSameSizeAs(named)
        .allSatisfy(
            mark ->
                assertThat(mark.passed())
                    .as(mark.toString())
                    .isEqualTo(!WRONG.contains(mark.scene())));
  }
}
