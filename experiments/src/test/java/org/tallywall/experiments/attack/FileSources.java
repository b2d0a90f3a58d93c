package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Files that people type, spoiled, each before the cheapest command that reads all of it. */
final class FileSources {
  private static final String CARD = Attack.HERE + "/card.json";
  private static final List<String> QUICK = List.of("nearest", "random-legal", "newcomer");

  /** The ways of playing of the tiny studies. */
  private static final List<String> WAYS =
      List.of("never", "hold-back", "1", "4", "own-need", "safest", "clumsy", "nearest");

  private final Seeds seeds;
  private final JsonSpoiler json;
  private final CsvSpoiler tables;
  private final TextSpoiler texts;

  FileSources(Seeds seeds) {
    this.seeds = seeds;
    this.json = new JsonSpoiler(seeds.harvest);
    this.tables = new CsvSpoiler(seeds.harvest);
    this.texts = new TextSpoiler(seeds.harvest);
  }

  private static Map<String, Plant> files(String name, String text) {
    Map<String, Plant> files = new LinkedHashMap<>();
    files.put("card.json", Plant.text(TinyStudies.CARD));
    files.put(name, Plant.text(text));
    return files;
  }

  Attack card(Chance chance) {
    String text = json.spoil(few(chance.pick(seeds.cards), chance), chance);
    return card("card", "card.json", text, chance);
  }

  Attack cardTable(Chance chance) {
    String text = tables.spoil(fewRows(chance.pick(seeds.cardTables), chance), chance);
    return card("card table", "card.csv", text, chance);
  }

  private static Attack card(String name, String file, String text, Chance chance) {
    Map<String, Plant> files = files(file, text);
    String card = Attack.HERE + "/" + file;
    return switch (chance.below(20)) {
      case 0 -> Attack.of(name, files, "card", "expand", card, "--csv");
      case 1 -> Attack.of(name, files, "card", "expand", card);
      case 2 -> compared(name, files, card);
      case 3 -> Attack.of(name, files, "rack", card, "113b 22c 57d NN RG0 FF");
      case 4 -> Attack.of(name, files, "rack", card, "113b 22c 57d NN RG0 FF", "--csv");
      case 5, 6, 7, 8 -> Attack.of(name, files, "card", "read", card);
      default -> Attack.of(name, files, "card", "check", card);
    };
  }

  private static Attack compared(String name, Map<String, Plant> files, String card) {
    files.put("other.csv", Plant.text(TinyStudies.CSV));
    return Attack.of(name, files, "card", "compare", card, Attack.HERE + "/other.csv");
  }

  /** A card of one or two families, mostly: a long card tells no more and takes longer. */
  private static JsonTree few(JsonTree card, Chance chance) {
    JsonTree small = card.copy();
    if (!chance.oneIn(20)) {
      JsonTree families = small.get("families");
      while (families.parts.size() > 2) {
        families.remove(chance.below(families.parts.size()));
      }
      for (JsonTree family : families.parts) {
        JsonTree lines = family.get("lines");
        while (lines.parts.size() > 3) {
          lines.remove(chance.below(lines.parts.size()));
        }
      }
    }
    return small;
  }

  private static String fewRows(String table, Chance chance) {
    List<String> rows = new ArrayList<>(table.lines().toList());
    while (rows.size() > 6) {
      rows.remove(1 + chance.below(rows.size() - 1));
    }
    return String.join("\n", rows) + "\n";
  }

  /** A study that is read and then refused, for the place of its results is a file. */
  Attack study(Chance chance) {
    String text = json.spoil(chance.pick(seeds.studies), chance);
    Map<String, Plant> files = files("study.json", text);
    files.put("out", Plant.text("no folder"));
    return Attack.of(
        "study", files, "run", Attack.HERE + "/study.json", "--out", Attack.HERE + "/out");
  }

  /** A study of which one game is played. */
  Attack studyGame(Chance chance) {
    Map<String, Plant> files = files("study.json", quick(chance));
    List<String> words = new ArrayList<>();
    words.addAll(List.of("game", "--study", Attack.HERE + "/study.json", "--deal", "1"));
    if (!chance.oneIn(3)) {
      words.addAll(List.of("--arm", chance.pick(WAYS)));
    }
    if (!chance.oneIn(3)) {
      words.addAll(List.of("--seat", "" + chance.below(4)));
    }
    return new Attack("study, a game", words, files);
  }

  /** A study that is played. */
  Attack studyRun(Chance chance) {
    Map<String, Plant> files = files("study.json", quick(chance));
    List<String> words = new ArrayList<>();
    words.addAll(List.of("run", Attack.HERE + "/study.json", "--out", Attack.HERE + "/out"));
    words.addAll(List.of("--deals", "" + (1 + chance.below(3)), "--threads", "1"));
    if (!chance.oneIn(20)) {
      words.add("--without-report");
    }
    return new Attack("study, played", words, files);
  }

  /** A study that is tried out for the three seconds that this takes. */
  Attack studyDryRun(Chance chance) {
    Map<String, Plant> files = files("study.json", quick(chance));
    String[] words = {
      "run", Attack.HERE + "/study.json", "--dry-run", "--out", Attack.HERE + "/out"
    };
    return Attack.of("study, tried out", files, words);
  }

  /** A tiny study spoiled so that its games stay few and short. */
  private String quick(Chance chance) {
    while (true) {
      JsonTree seed = chance.pick(seeds.tinyStudies);
      String text = json.spoil(seed, chance);
      int most = text.contains("round-robin") ? 13 : 40;
      if (!text.contains("rollout") && 10 * text.length() < most * seed.toString().length()) {
        return text;
      }
    }
  }

  Attack rules(Chance chance) {
    String text = json.spoil(JsonTree.read(TinyStudies.RULES), chance);
    Map<String, Plant> files = files("rules.json", text);
    String rules = Attack.HERE + "/rules.json";
    if (chance.oneIn(2)) {
      return Attack.of(
          "rules",
          files,
          "game",
          "--card",
          CARD,
          "--seed",
          "3",
          "--deal",
          "1",
          "--players",
          "nearest,nearest,random-legal,nearest",
          "--rules",
          rules);
    }
    return asked(
        "rules", files, chance.pick(seeds.scenes), chance.pick(QUICK), List.of("--rules", rules));
  }

  Attack player(Chance chance) {
    String text = json.spoil(JsonTree.read(TinyStudies.PLAYER), chance);
    if (text.contains("rollout")) {
      text = TinyStudies.PLAYER;
    }
    Map<String, Plant> files = files("player.json", text);
    return asked(
        "player", files, chance.pick(seeds.scenes), Attack.HERE + "/player.json", List.of());
  }

  Attack sheet(Chance chance) {
    Scene scene = chance.pick(seeds.scenes);
    Map<String, Plant> files = files("card.json", TinyStudies.CARD);
    Scene spoiled = new Scene(texts.words(scene.text(), chance), scene.card());
    return asked("sheet", files, spoiled, chance.of("nearest", "newcomer", "watchful"), List.of());
  }

  private static Attack asked(
      String name, Map<String, Plant> files, Scene scene, String player, List<String> more) {
    files.put("card.json", Plant.text(scene.card()));
    files.put("scene.txt", Plant.text(scene.text()));
    List<String> words = new ArrayList<>();
    words.addAll(List.of("ask", Attack.HERE + "/scene.txt", "--card", CARD));
    words.addAll(List.of("--player", player, "--seeds", "1"));
    words.addAll(more);
    return new Attack(name, words, files);
  }

  Attack rack(Chance chance) {
    String racks = texts.words(TinyStudies.RACKS, chance);
    Map<String, Plant> files = files("racks.txt", racks);
    List<String> words = new ArrayList<>(List.of("rack", CARD));
    if (chance.oneIn(2)) {
      words.addAll(List.of("--from", Attack.HERE + "/racks.txt"));
    } else {
      String[] parts = racks.lines().findFirst().orElse("").split("/", 2);
      words.add(parts[0]);
      if (parts.length > 1) {
        words.addAll(List.of("--exposed", parts[1]));
      }
    }
    if (chance.oneIn(3)) {
      words.add(chance.of("--csv", "--all"));
    }
    return new Attack("rack", words, files);
  }

  /** A file of any kind under the name of another. */
  Attack wrongKind(Chance chance) {
    byte[] bytes =
        switch (chance.below(5)) {
          case 0 -> chance.bytes(chance.below(300));
          case 1 -> ByteSpoiler.packed(TinyStudies.CARD.getBytes());
          case 2 -> ByteSpoiler.spoil(TinyStudies.CARD.getBytes(), chance);
          case 3 -> chance.pick(seeds.scenes).text().getBytes();
          default -> ByteSpoiler.spoil(TinyStudies.STUDIES.get("arms").getBytes(), chance);
        };
    Map<String, Plant> files = files("card.json", TinyStudies.CARD);
    String name = chance.of("x.json", "x.csv", "x.txt", "x.jsonl", "x.jsonl.gz", "x");
    files.put(name, new Plant.Bytes(bytes));
    String file = Attack.HERE + "/" + name;
    return switch (chance.below(5)) {
      case 0 -> Attack.of("wrong kind", files, "replay", file, "--card", CARD);
      case 1 -> Attack.of("wrong kind", files, "ask", file, "--card", CARD, "--player", "nearest");
      case 2 -> Attack.of("wrong kind", files, "rack", CARD, "--from", file);
      case 3 -> Attack.of("wrong kind", files, "game", "--study", file, "--deal", "0");
      default -> Attack.of("wrong kind", files, "card", "check", file);
    };
  }
}
