package org.tallywall.experiments.gauges;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tallywall.core.card.CardFile;
import org.tallywall.experiments.ask.Scenes;
import org.tallywall.strategies.catalog.PlayerSpec;

/** How many scenes players pass: each put with twenty seeds and under all exchanges of suits. */
final class SceneScores {
  private final List<Scenes> scenes;

  /** The scenes of the project. */
  SceneScores(Path experiments) {
    scenes =
        List.of(
            scenes(experiments, "scenes/heron-reach/card.json", "heron-reach"),
            scenes(experiments, "cards/saltmarsh-quay.json", "saltmarsh-quay"));
  }

  private static Scenes scenes(Path experiments, String card, String folder) {
    return Scenes.of(
        CardFile.read(experiments.resolve(card)).orThrow(),
        experiments.resolve("scenes").resolve(folder));
  }

  /** The scores of several players, by their names; the players are marked beside each other. */
  Map<String, List<String>> of(Map<String, PlayerSpec> players) {
    Map<String, List<String>> scores = new TreeMap<>();
    players.entrySet().parallelStream()
        .map(player -> Map.entry(player.getKey(), of(player.getValue())))
        .toList()
        .forEach(score -> scores.put(score.getKey(), score.getValue()));
    return scores;
  }

  /** As in "10 of 10", a text for each group of scenes; a player that sees all is not marked. */
  private List<String> of(PlayerSpec player) {
    List<String> texts = new ArrayList<>();
    for (Scenes group : scenes) {
      Optional<Integer> passed =
          player.mark().isPresent() ? Optional.empty() : Optional.of(group.score(player::make));
      texts.add(passed.map(score -> score + " of " + group.sheets().size()).orElse("–"));
    }
    return texts;
  }
}
