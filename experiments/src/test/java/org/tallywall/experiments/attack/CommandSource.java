package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Commands with words missing, doubled, wrong, huge or empty, over valid files. Whatever is written
 * stays in the folder of the attack, and whatever is played stays short.
 */
final class CommandSource {
  private static final Set<String> WRITING =
      Set.of("--out", "--record", "--html", "--write", "--md", "--svg", "--csv");
  private static final Set<String> PLAYING = Set.of("--deals", "--seeds", "--threads");
  private static final String CARD = Attack.HERE + "/card.json";

  /** Commands that are right. */
  static final List<List<String>> COMMANDS =
      List.of(
          List.of("card", "check", CARD),
          List.of("card", "read", CARD),
          List.of("card", "expand", CARD, "--csv"),
          List.of("card", "compare", CARD, Attack.HERE + "/card.csv"),
          List.of("card", "invent", "--lines", "13", "--seed", "4", "--name", "Quay"),
          List.of("rack", CARD, "113b 22c 57d NN RG0 FF"),
          List.of("rack", CARD, "113b 99d S FF RG", "--exposed", "333cJ", "--all"),
          List.of("rack", CARD, "--from", Attack.HERE + "/racks.txt", "--csv"),
          List.of(
              "ask",
              Attack.HERE + "/scene.txt",
              "--card",
              Attack.HERE + "/reach.json",
              "--player",
              "nearest"),
          List.of(
              "game",
              "--card",
              CARD,
              "--seed",
              "3",
              "--deal",
              "1",
              "--players",
              "nearest,nearest,nearest,nearest",
              "--spoken",
              "--names",
              "A,B,C,D"),
          List.of(
              "game",
              "--study",
              Attack.HERE + "/study.json",
              "--deal",
              "2",
              "--arm",
              "never",
              "--seat",
              "2",
              "--record",
              Attack.HERE + "/g.jsonl",
              "--reasons"),
          List.of("players"),
          List.of("players", "watchful", "passes"),
          List.of("players", "--find", "pair"),
          List.of("rules"),
          List.of("rules", "charleston"),
          List.of("rules", "--find", "joker"),
          List.of("rules", "--write", Attack.HERE + "/my-rules.json"),
          List.of("study", "new"),
          List.of("study", "new", "arms", "--card", CARD, "--out", Attack.HERE + "/new.json"),
          List.of("chances"),
          List.of("chances", "jokers", "--at-least", "2", "--rules", Attack.HERE + "/rules.json"),
          List.of("chances", "pairs", "--tiles", "13..15", "--md", Attack.HERE + "/p.md"),
          List.of("chances", "pass", "--wanted", "1..12", "--jokers", "2", "--east"),
          List.of("chances", "draw", "--wanted", "3", "--draws", "5..20", "--unseen", "60"),
          List.of("chances", "wait", "5b 8b", "--seen", "55b", "--wall", "20..80/4"),
          List.of(
              "chances",
              "wait",
              "--wanted",
              "6",
              "--wall",
              "20..40",
              "--before-me",
              "2",
              "--csv",
              Attack.HERE + "/w.csv",
              "--html",
              Attack.HERE + "/w.html",
              "--svg",
              Attack.HERE + "/w.svg"),
          List.of("chances", "draws-left", "--wall", "80,60,40"),
          List.of("study", "list"),
          List.of("completion"),
          List.of("help"),
          List.of("help", "card", "check"),
          List.of(
              "run",
              Attack.HERE + "/study.json",
              "--deals",
              "2",
              "--seed",
              "9",
              "--out",
              Attack.HERE + "/out",
              "--on-existing",
              "fail",
              "--threads",
              "1",
              "--without-report"),
          List.of("report", Attack.HERE + "/out", "--format", "notes"),
          List.of("verify", Attack.HERE + "/out", "--blocks", "1", "--seed", "1"),
          List.of(
              "replay",
              Attack.HERE + "/out/records.jsonl.gz",
              "--card",
              CARD,
              "--html",
              Attack.HERE + "/p.html",
              "--game",
              "1"),
          List.of("card", "--help"),
          List.of("run", "--help"),
          List.of("--version"),
          List.of("--help"));

  private final Seeds seeds;
  private final TextSpoiler texts;
  private final Map<String, Plant> files;
  private final List<String> dictionary;

  CommandSource(Seeds seeds) {
    this.seeds = seeds;
    this.texts = new TextSpoiler(seeds.harvest);
    this.files = new LinkedHashMap<>(seeds.results.get("arms"));
    files.put("card.csv", Plant.text(TinyStudies.CSV));
    files.put("racks.txt", Plant.text(TinyStudies.RACKS));
    files.put("scene.txt", Plant.text(seeds.scenes.get(0).text()));
    files.put("reach.json", Plant.text(seeds.scenes.get(0).card()));
    files.put("rules.json", Plant.text("{ \"tiles.jokers\": 10 }"));
    this.dictionary =
        COMMANDS.stream()
            .flatMap(List::stream)
            .filter(word -> !word.startsWith(Attack.HERE))
            .distinct()
            .toList();
  }

  /** A command that is right. */
  Attack right(List<String> command) {
    return new Attack("command", command, files);
  }

  Attack next(Chance chance) {
    List<String> words = new ArrayList<>(chance.pick(COMMANDS));
    for (int times = 1 + chance.below(3); times > 0 && !words.isEmpty(); times--) {
      once(words, chance);
    }
    return new Attack("command", harmless(words), files);
  }

  private void once(List<String> words, Chance chance) {
    int at = chance.below(words.size());
    switch (chance.below(9)) {
      case 0 -> words.remove(at);
      case 1 -> words.add(at, words.get(at));
      case 2 -> words.set(at, place(words.get(at), chance.pick(Hostile.TEXTS)));
      case 3 -> words.set(at, place(words.get(at), chance.pick(Hostile.NUMBERS)));
      case 4 -> words.set(at, place(words.get(at), texts.edit(words.get(at), chance)));
      case 5 -> words.add(at, chance.pick(dictionary));
      case 6 -> words.set(at, chance.pick(dictionary));
      case 7 -> Collections.swap(words, at, chance.below(words.size()));
      default -> words.addAll(Collections.nCopies(chance.oneIn(9) ? 200 : 3, words.get(at)));
    }
  }

  /** A name of a file stays in the folder of the attack. */
  private static String place(String word, String other) {
    return word.startsWith(Attack.HERE) ? inside(other) : other;
  }

  private static String inside(String name) {
    return Attack.HERE + "/" + name.replace(Attack.HERE, "").replace("/", "").replace("..", "");
  }

  /** Keeps what is written inside the folder, and what is played short. */
  private static List<String> harmless(List<String> words) {
    List<String> safe = new ArrayList<>(words);
    for (int at = 0; at + 1 < safe.size(); at++) {
      String next = safe.get(at + 1);
      if (WRITING.contains(safe.get(at)) && !next.startsWith(Attack.HERE)) {
        safe.set(at + 1, inside(next));
      } else if (PLAYING.contains(safe.get(at)) && next.matches("[0-9]{2,12}")) {
        safe.set(at + 1, "3");
      }
    }
    safe.removeIf(word -> word.equals("--balance") || word.equals("--dry-run"));
    boolean writes = safe.contains("run") || safe.contains("report");
    if (writes && !safe.contains("--out")) {
      safe.addAll(List.of("--out", Attack.HERE + "/other"));
    }
    return safe;
  }
}
