package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/** Spoils comma-separated values: cells, rows, columns and the header. */
final class CsvSpoiler {
  private static final int MANY = 300;

  private final Harvest harvest;
  private final TextSpoiler letters;

  CsvSpoiler(Harvest harvest) {
    this.harvest = harvest;
    this.letters = new TextSpoiler(harvest);
  }

  String spoil(String text, Chance chance) {
    List<List<String>> rows = new ArrayList<>();
    for (String line : text.split("\n")) {
      rows.add(new ArrayList<>(Arrays.asList(line.split(",", -1))));
    }
    for (int times = chance.oneIn(4) ? 2 : 1; times > 0; times--) {
      once(rows, chance);
    }
    String between = chance.oneIn(25) ? chance.of(";", "\t", "|") : ",";
    String end = chance.oneIn(25) ? chance.of("\r\n", "\r", "\n\n") : "\n";
    StringBuilder spoiled = new StringBuilder(chance.oneIn(40) ? "\ufeff" : "");
    rows.forEach(row -> spoiled.append(String.join(between, row)).append(end));
    return chance.oneIn(12) ? letters.edit(spoiled.toString(), chance) : spoiled.toString();
  }

  private void once(List<List<String>> rows, Chance chance) {
    if (rows.isEmpty()) {
      return;
    }
    int at = chance.below(rows.size());
    switch (chance.below(10)) {
      case 0 -> rows.remove(at);
      case 1 -> rows.add(at, new ArrayList<>(rows.get(at)));
      case 2 -> Collections.swap(rows, at, chance.below(rows.size()));
      case 3 -> column(rows, chance);
      case 4 -> cell(rows.get(0), chance);
      case 5 -> many(rows, at, chance);
      default -> cell(rows.get(at), chance);
    }
  }

  private static void many(List<List<String>> rows, int at, Chance chance) {
    if (chance.oneIn(2)) {
      rows.addAll(at, Collections.nCopies(MANY, rows.get(at)));
    } else {
      rows.subList(1, rows.size()).clear();
    }
  }

  private static void column(List<List<String>> rows, Chance chance) {
    int column = chance.below(1 + rows.get(0).size());
    boolean drop = chance.oneIn(2);
    for (List<String> row : rows) {
      if (column < row.size() && drop) {
        row.remove(column);
      } else if (column < row.size()) {
        row.add(row.get(column));
      }
    }
  }

  private void cell(List<String> row, Chance chance) {
    if (row.isEmpty()) {
      return;
    }
    int at = chance.below(row.size());
    switch (chance.below(7)) {
      case 0 -> row.set(at, chance.pick(Hostile.NUMBERS));
      case 1 -> row.set(at, chance.pick(Hostile.TEXTS));
      case 2 -> row.set(at, letters.edit(row.get(at), chance));
      case 3 -> row.set(at, chance.pick(harvest.words()));
      case 4 -> Collections.swap(row, at, chance.below(row.size()));
      case 5 -> row.remove(at);
      default -> row.set(at, "");
    }
  }
}
