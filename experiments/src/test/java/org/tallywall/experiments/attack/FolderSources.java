package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Results folders in which one thing is not as the program left it. */
final class FolderSources {
  private static final String OUT = Attack.HERE + "/out";
  private static final String RECORDS = "out/records.jsonl.gz";
  private static final String VICTIM = Attack.ELSEWHERE + "victim.txt";

  private final Seeds seeds;
  private final JsonSpoiler json;
  private final CsvSpoiler tables;
  private final TextSpoiler texts;
  private final List<String> designs;
  private final List<String> recorded;

  FolderSources(Seeds seeds) {
    this.seeds = seeds;
    this.json = new JsonSpoiler(seeds.harvest);
    this.tables = new CsvSpoiler(seeds.harvest);
    this.texts = new TextSpoiler(seeds.harvest);
    this.designs = List.copyOf(seeds.results.keySet());
    this.recorded =
        designs.stream().filter(name -> seeds.results.get(name).containsKey(RECORDS)).toList();
  }

  /** Records, read again by the rules. */
  Attack records(Chance chance) {
    Map<String, Plant> whole = seeds.results.get(chance.pick(recorded));
    Map<String, Plant> files = new LinkedHashMap<>();
    files.put("card.json", whole.get("card.json"));
    byte[] packed = ((Plant.Bytes) whole.get(RECORDS)).bytes();
    boolean zip = chance.oneIn(4);
    String name = zip ? "games.jsonl.gz" : "games.jsonl";
    files.put(name, zip ? spoiledArchive(packed, chance) : Plant.text(games(packed, chance)));
    List<String> words = new ArrayList<>(List.of("replay", Attack.HERE + "/" + name));
    words.addAll(List.of("--card", Attack.HERE + "/card.json"));
    if (chance.oneIn(10)) {
      words.addAll(List.of("--html", Attack.HERE + "/page.html"));
    }
    return new Attack("records", words, files);
  }

  private Plant spoiledArchive(byte[] packed, Chance chance) {
    if (chance.oneIn(2)) {
      return new Plant.Bytes(ByteSpoiler.spoil(packed, chance));
    }
    byte[] games = games(packed, chance).getBytes(java.nio.charset.StandardCharsets.UTF_8);
    return new Plant.Bytes(ByteSpoiler.packed(games));
  }

  private String games(byte[] packed, Chance chance) {
    String text = new String(ByteSpoiler.unpacked(packed), java.nio.charset.StandardCharsets.UTF_8);
    List<String> games = new ArrayList<>(text.lines().toList());
    while (games.size() > 1) {
      games.remove(chance.below(games.size()));
    }
    if (chance.oneIn(3)) {
      return texts.edit(games.get(0), chance) + "\n";
    }
    return json.spoil(JsonTree.read(games.get(0)), chance).replace("\n", "") + "\n";
  }

  /** A spoiled file of results, before the papers are made again. */
  Attack report(Chance chance) {
    Map<String, Plant> files = spoiled(seeds.results.get(chance.pick(designs)), chance);
    String format =
        chance.oneIn(40) ? "charts" : chance.oneIn(12) ? "games" : chance.of("notes", "page");
    return Attack.of("report", files, "report", OUT, "--format", format);
  }

  /** Two folders on one page. */
  Attack pack(Chance chance) {
    Map<String, Plant> files = spoiled(seeds.results.get(chance.pick(designs)), chance);
    seeds
        .results
        .get(chance.pick(designs))
        .forEach((name, plant) -> files.put("second/" + name, plant));
    String[] words = {
      "report", OUT, Attack.HERE + "/second/out", "--out", Attack.HERE + "/pack.html"
    };
    return Attack.of("report, a pack", files, words);
  }

  /** A spoiled manifest, study or block, before it is played once more. */
  Attack verify(Chance chance) {
    Map<String, Plant> files = spoiledStore(seeds.results.get(chance.pick(designs)), chance);
    return Attack.of(
        "verify", files, "verify", OUT, "--blocks", "1", "--seed", "1", "--threads", "1");
  }

  /** A spoiled manifest, study or block, before the run goes on. */
  Attack resume(Chance chance) {
    Map<String, Plant> files = spoiledStore(seeds.unfinished.get(chance.pick(designs)), chance);
    return run("resume", files, "resume");
  }

  /** A spoiled folder, before a run that takes its place or refuses to. */
  Attack existing(Chance chance) {
    Map<String, Plant> files = spoiled(seeds.results.get(chance.pick(designs)), chance);
    return run("existing", files, chance.of("overwrite", "fail", "resume"));
  }

  private static Attack run(String name, Map<String, Plant> files, String onExisting) {
    List<String> words = new ArrayList<>();
    words.addAll(List.of("run", Attack.HERE + "/study.json", "--out", OUT));
    words.addAll(List.of("--on-existing", onExisting, "--threads", "1", "--without-report"));
    return new Attack(name, words, files);
  }

  private Map<String, Plant> spoiled(Map<String, Plant> whole, Chance chance) {
    List<String> names = whole.keySet().stream().filter(name -> name.startsWith("out/")).toList();
    return spoiled(whole, chance.pick(names), chance);
  }

  private Map<String, Plant> spoiledStore(Map<String, Plant> whole, Chance chance) {
    List<String> blocks =
        whole.keySet().stream().filter(name -> name.startsWith("out/blocks/")).toList();
    return spoiled(
        whole,
        switch (chance.below(3)) {
          case 0 -> "out/manifest.json";
          case 1 -> "out/study.json";
          default -> chance.pick(blocks);
        },
        chance);
  }

  private Map<String, Plant> spoiled(Map<String, Plant> whole, String name, Chance chance) {
    Map<String, Plant> files = new LinkedHashMap<>(whole);
    files.put(VICTIM, Plant.text("victim"));
    if (chance.oneIn(25)) {
      odd(files, name, chance);
    } else {
      files.put(name, spoiledFile(name, (Plant.Bytes) whole.get(name), chance));
    }
    return files;
  }

  /** Something else where a file was, or where one is going to be. */
  private static void odd(Map<String, Plant> files, String name, Chance chance) {
    switch (chance.below(6)) {
      case 0 -> files.put(name, new Plant.Folder());
      case 1 -> files.put(name, new Plant.Link(VICTIM));
      case 2 -> files.put(name, new Plant.Link(Attack.ELSEWHERE + "nothing"));
      case 3 -> files.put(name + ".part", new Plant.Link(VICTIM));
      case 4 -> files.put(name + ".part", new Plant.Folder());
      default -> files.remove(name);
    }
  }

  private Plant spoiledFile(String name, Plant.Bytes file, Chance chance) {
    if (name.endsWith(".json") && !chance.oneIn(4)) {
      return Plant.text(json.spoil(JsonTree.read(Seeds.text(file)), chance));
    } else if (name.endsWith(".csv") && !chance.oneIn(6)) {
      return Plant.text(tables.spoil(Seeds.text(file), chance));
    } else if (name.endsWith(".gz")) {
      return spoiledArchive(file.bytes(), chance);
    }
    return new Plant.Bytes(ByteSpoiler.spoil(file.bytes(), chance));
  }
}
