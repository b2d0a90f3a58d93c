package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Spoils plain text by letters, and sheets and racks by their words and lines. */
final class TextSpoiler {
  private static final int MANY = 300;

  private final Harvest harvest;

  TextSpoiler(Harvest harvest) {
    this.harvest = harvest;
  }

  /** Changes some letters. */
  String edit(String text, Chance chance) {
    if (text.isEmpty()) {
      return chance.pick(Hostile.TEXTS);
    }
    int at = chance.below(text.length());
    int end = Math.min(text.length(), at + 1 + chance.below(chance.oneIn(8) ? 40 : 2));
    return switch (chance.below(7)) {
      case 0 -> text.substring(0, at) + text.substring(end);
      case 1 -> text.substring(0, at) + chance.pick(Hostile.TEXTS) + text.substring(at);
      case 2 -> text.substring(0, end) + text.substring(at);
      case 3 -> text.substring(0, at) + (char) (' ' + chance.below(95)) + text.substring(at + 1);
      case 4 -> text.substring(0, at);
      case 5 -> text.substring(0, at) + chance.pick(harvest.words()) + text.substring(at);
      default ->
          text.substring(0, at)
              + text.substring(at, end).repeat(chance.oneIn(6) ? MANY : 3)
              + text.substring(end);
    };
  }

  /** Changes words and lines. */
  String words(String text, Chance chance) {
    List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
    for (int times = chance.oneIn(4) ? 2 : 1; times > 0; times--) {
      int at = chance.below(lines.size());
      switch (chance.below(8)) {
        case 0 -> line(lines, at, chance);
        case 1 -> lines.set(at, edit(lines.get(at), chance));
        default -> lines.set(at, word(lines.get(at), chance));
      }
      if (lines.isEmpty()) {
        lines.add("");
      }
    }
    String spoiled = String.join(chance.oneIn(30) ? "\r" : "\n", lines);
    return chance.oneIn(20) ? edit(spoiled, chance) : spoiled;
  }

  private void line(List<String> lines, int at, Chance chance) {
    switch (chance.below(5)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, lines.get(at));
      case 2 -> lines.addAll(at, Collections.nCopies(MANY, lines.get(at)));
      case 3 -> Collections.swap(lines, at, chance.below(lines.size()));
      default -> lines.add(at, chance.pick(harvest.lines()));
    }
  }

  private String word(String line, Chance chance) {
    List<String> words = new ArrayList<>(Arrays.asList(line.split(" +", -1)));
    int at = chance.below(words.size());
    switch (chance.below(8)) {
      case 0 -> words.remove(at);
      case 1 -> words.add(at, words.get(at));
      case 2 -> Collections.swap(words, at, chance.below(words.size()));
      case 3 -> words.set(at, chance.pick(Hostile.TEXTS));
      case 4 -> words.set(at, chance.pick(Hostile.NUMBERS));
      case 5 -> words.set(at, edit(words.get(at), chance));
      case 6 -> words.add(at, chance.pick(harvest.words()));
      default -> words.set(at, chance.pick(harvest.words()));
    }
    return String.join(" ", words);
  }
}
