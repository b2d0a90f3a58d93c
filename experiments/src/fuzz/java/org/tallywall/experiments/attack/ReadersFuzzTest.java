package org.tallywall.experiments.attack;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.cli.Keyboard;

/**
 * Text that is changed wherever that leads a reader somewhere new. Each method is a search of its
 * own, of one minute; DEVELOPERS.md says how to start it.
 */
class ReadersFuzzTest {
  private static final String TIME = "1m";
  private static final Path SCENES = Path.of("scenes", "heron-reach");

  private final Keyboard keyboard = new Keyboard();

  @FuzzTest(maxDuration = TIME)
  void card(FuzzedDataProvider data) throws IOException {
    put(data, "typed.json", "card", "check", "{here}/typed.json");
  }

  @FuzzTest(maxDuration = TIME)
  void cardTable(FuzzedDataProvider data) throws IOException {
    put(data, "typed.csv", "card", "check", "{here}/typed.csv");
  }

  /** The study is read and then refused, for the place of its results is a file. */
  @FuzzTest(maxDuration = TIME)
  void study(FuzzedDataProvider data) throws IOException {
    put(data, "study.json", "run", "{here}/study.json", "--out", "{here}/study.json");
  }

  @FuzzTest(maxDuration = TIME)
  void sheet(FuzzedDataProvider data) throws IOException {
    String card = SCENES.resolve("card.json").toString();
    put(data, "scene.txt", "ask", "{here}/scene.txt", "--card", card, "--player", "nearest");
  }

  @FuzzTest(maxDuration = TIME)
  void rack(FuzzedDataProvider data) throws IOException {
    put(data, "racks.txt", "rack", "{here}/card.json", "--from", "{here}/racks.txt");
  }

  @FuzzTest(maxDuration = TIME)
  void record(FuzzedDataProvider data) throws IOException {
    put(data, "games.jsonl", "replay", "{here}/games.jsonl", "--card", "{here}/card.json");
  }

  private void put(FuzzedDataProvider data, String file, String... words) throws IOException {
    Map<String, Plant> files = new LinkedHashMap<>();
    files.put("card.json", Plant.text(TinyStudies.CARD));
    files.put(file, Plant.text(data.consumeRemainingAsString()));
    Attack attack = new Attack("fuzz", List.of(words), files);
    Path folder = Files.createDirectories(Path.of("target", "fuzz"));
    Inventory.clear(folder);
    attack.plant(folder);
    Map<String, String> before = Inventory.of(folder);
    Capture out = new Capture();
    Capture err = new Capture();
    int code = keyboard.type(out, err, attack.words(folder));
    Outcome outcome = new Outcome(code, out, err, null, "", before, Inventory.of(folder));
    List<String> broken = Promise.broken(attack, outcome);
    if (!broken.isEmpty()) {
      throw new AssertionError(broken + "\n" + attack.command() + "\n" + attack.shown());
    }
  }
}
