package org.tallywall.experiments.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.tallywall.experiments.cli.Keyboard;

/** Valid files of every kind: those of the project, and results of tiny studies played here. */
final class Seeds {
  /** Where tests find the files of the project. */
  private static final Path PROJECT = Path.of("..");

  private static final List<String> LEFT_OUT = List.of("charts/", "games/", "notes.html");

  final List<JsonTree> cards = new ArrayList<>();
  final List<JsonTree> studies = new ArrayList<>();
  final List<JsonTree> tinyStudies = new ArrayList<>();
  final List<String> cardTables = new ArrayList<>();
  final List<Scene> scenes = new ArrayList<>();
  final Map<String, Map<String, Plant>> results = new LinkedHashMap<>();
  final Map<String, Map<String, Plant>> unfinished = new LinkedHashMap<>();
  final Harvest harvest = new Harvest();

  /**
   * Gathers them.
   *
   * @param folder where the tiny studies are played
   */
  Seeds(Path folder) {
    try {
      cards();
      studies();
      scenes();
      for (Map.Entry<String, String> study : new TreeMap<>(TinyStudies.STUDIES).entrySet()) {
        play(Files.createDirectories(folder.resolve(study.getKey())), study);
      }
      cards.forEach(harvest::json);
      studies.forEach(harvest::json);
      harvest.json(JsonTree.read(TinyStudies.RULES)).json(JsonTree.read(TinyStudies.PLAYER));
      scenes.forEach(scene -> harvest.text(scene.text()));
      for (Path file : files("strategies/src/test/resources/positions", ".txt")) {
        harvest.text(Files.readString(file));
      }
      cardTables.forEach(harvest::text);
      harvest.text(TinyStudies.RACKS).done();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void cards() throws IOException {
    cards.add(JsonTree.read(TinyStudies.CARD));
    cardTables.add(TinyStudies.CSV);
    for (Path file : files("experiments/cards", ".json")) {
      if (!file.endsWith("card.schema.json")) {
        JsonTree card = JsonTree.read(Files.readString(file));
        cards.add(card);
        cardTables.add(CardTable.of(card));
      }
    }
    cards.add(JsonTree.read(Files.readString(at("experiments/scenes/heron-reach/card.json"))));
  }

  private void studies() throws IOException {
    for (Path file : files("experiments/studies", ".json")) {
      studies.add(onTheSmallCard(Files.readString(file)));
    }
    for (Path file : files("strategies/examples", ".json")) {
      studies.add(onTheSmallCard(Files.readString(file)));
    }
    new TreeMap<>(TinyStudies.STUDIES)
        .values()
        .forEach(study -> tinyStudies.add(JsonTree.read(study)));
    studies.addAll(tinyStudies);
  }

  /** The card of the project has many hands, which take longer than what is tried here. */
  private static JsonTree onTheSmallCard(String study) {
    JsonTree tree = JsonTree.read(study);
    tree.get("card").text = "\"card.json\"";
    return tree;
  }

  /** Scenes of the short card are all there; of the long one, which takes longer to read, a few. */
  private void scenes() throws IOException {
    scenes("experiments/scenes/heron-reach", "experiments/scenes/heron-reach/card.json", 1);
    scenes("experiments/scenes/heron-reach-further", "experiments/scenes/heron-reach/card.json", 1);
    scenes("experiments/scenes/saltmarsh-quay", "experiments/cards/saltmarsh-quay.json", 12);
  }

  private void scenes(String folder, String card, int each) throws IOException {
    String hands = Files.readString(at(card));
    List<Path> found = files(folder, ".txt");
    for (int at = 0; at < found.size(); at += each) {
      scenes.add(new Scene(Files.readString(found.get(at)), hands));
    }
  }

  private static Path at(String name) {
    return PROJECT.resolve(name);
  }

  private static List<Path> files(String folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(at(folder))) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  private void play(Path folder, Map.Entry<String, String> study) throws IOException {
    Files.writeString(folder.resolve("card.json"), TinyStudies.CARD);
    Files.writeString(folder.resolve("study.json"), study.getValue());
    Path out = folder.resolve("out");
    Capture said = new Capture();
    int code =
        new Keyboard()
            .type(
                new Capture(),
                said,
                "run",
                folder.resolve("study.json").toString(),
                "--out",
                out.toString(),
                "--without-report");
    if (code != 0) {
      throw new IllegalStateException(study.getKey() + ": " + said.text());
    }
    results.put(study.getKey(), read(folder));
    unfinished.put(study.getKey(), unfinished(results.get(study.getKey())));
  }

  private static Map<String, Plant> read(Path folder) throws IOException {
    Map<String, Plant> files = new LinkedHashMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
        String name = folder.relativize(file).toString();
        if (LEFT_OUT.stream().noneMatch(name::contains)) {
          files.put(name, new Plant.Bytes(Files.readAllBytes(file)));
        }
      }
    }
    return files;
  }

  /** A run that was killed after its last block and before its results. */
  private static Map<String, Plant> unfinished(Map<String, Plant> whole) {
    Map<String, Plant> files = new LinkedHashMap<>(whole);
    files
        .keySet()
        .removeIf(
            name ->
                name.startsWith("out/")
                    && !name.startsWith("out/blocks/")
                    && !name.endsWith("manifest.json")
                    && !name.endsWith("study.json"));
    files.computeIfPresent(
        "out/manifest.json",
        (name, manifest) -> Plant.text(text(manifest).replace("\"complete\"", "\"running\"")));
    return files;
  }

  static String text(Plant file) {
    return new String(((Plant.Bytes) file).bytes(), StandardCharsets.UTF_8);
  }
}
