package org.tallywall.reports.papers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Damages the text of a file of results in one way, drawn from a seed. */
final class Damage {
  private static final String[] CELLS = {
    "",
    " ",
    "abc",
    "NaN",
    "Infinity",
    "1e308",
    "-1e308",
    "1e400",
    "1e99",
    "-1e14",
    "-1",
    "-0.5",
    "0",
    "0.5",
    "1",
    "1.5",
    "2",
    "30",
    "1e15",
    "99999999999999999999",
    "9223372036854775807",
    "4294967297",
    "1e-320",
    "0x10",
    "1f",
    "1,5",
    "yes",
    "no",
    "all",
    "table",
    "points",
    "win-rate",
    "share of games",
    "tiles",
    "too few",
    "primary",
    "none of that size",
    "more",
    "=1+1",
    "-",
    "\u001b[2J",
    "\u201c",
    "a\nb",
    "\"",
    "\\u{1b}",
    "-low",
    "x".repeat(300),
    "9".repeat(400),
    "99-98"
  };
  private static final String[] FACTS = {
    "null",
    "true",
    "[]",
    "{}",
    "[[[1]]]",
    "\"\"",
    "\" \"",
    "\"x\"",
    "\"points\"",
    "\"safest\"",
    "0",
    "1",
    "-1",
    "0.5",
    "0.95",
    "1e308",
    "-1e400",
    "1e99999999",
    "1e9999999999",
    "1e-400",
    "12345678901",
    "\"\\u0000\\u001b\"",
    "\"passes\"",
    "\"" + "x".repeat(20_000) + "\"",
    "{\"player\": null}",
    "{\"away\": 1}",
    "NaN",
    "'",
    ""
  };

  private final Random random;

  Damage(Random random) {
    this.random = random;
  }

  /** The text with one thing changed in it; null where the file is to be missing. */
  String of(String name, String text) {
    if (random.nextInt(40) == 0) {
      return null;
    } else if (random.nextInt(12) == 0) {
      return bytes(text);
    }
    return name.endsWith(".csv") ? sheet(text) : facts(text);
  }

  private String bytes(String text) {
    int at = random.nextInt(text.length() + 1);
    return switch (random.nextInt(6)) {
      case 0 -> text.substring(0, at);
      case 1 -> "";
      case 2 -> text.substring(0, at) + (char) random.nextInt(256) + text.substring(at);
      case 3 -> text.substring(0, at) + "\"" + text.substring(at);
      case 4 -> text.replace("\n", "\r\n");
      default -> at == text.length() ? text : text.substring(0, at) + text.substring(at + 1);
    };
  }

  /** A value in place of another one, or a field less. */
  private String facts(String text) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    if (lines.isEmpty()) {
      return "{}";
    }
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    int colon = line.indexOf("\": ");
    if (colon < 0 || random.nextInt(6) == 0) {
      lines.remove(at);
    } else {
      String end = line.endsWith(",") ? "," : "";
      String value = FACTS[random.nextInt(FACTS.length)];
      lines.set(at, line.substring(0, colon + 3) + value + end);
    }
    return String.join("\n", lines) + "\n";
  }

  private String sheet(String text) {
    List<List<String>> rows = new ArrayList<>();
    text.lines().forEach(line -> rows.add(new ArrayList<>(cells(line))));
    if (rows.isEmpty()) {
      return "a";
    }
    switch (random.nextInt(10)) {
      case 0 -> header(rows);
      case 1 -> rows(rows);
      default -> cell(rows);
    }
    StringBuilder out = new StringBuilder();
    rows.forEach(row -> out.append(String.join(",", row)).append('\n'));
    return out.toString();
  }

  /** Cells as they stand in the file, quotation marks kept. */
  private static List<String> cells(String line) {
    return Arrays.asList(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1));
  }

  private void cell(List<List<String>> rows) {
    List<String> row = rows.get(random.nextInt(rows.size()));
    int column = random.nextInt(row.size());
    List<String> other = rows.get(random.nextInt(rows.size()));
    String old = row.get(column);
    String cell =
        switch (random.nextInt(6)) {
          case 0 -> other.get(random.nextInt(other.size()));
          case 1 -> other.get(Math.min(column, other.size() - 1));
          case 2 -> old.startsWith("-") ? old.substring(1) : "-" + old;
          case 3 -> old + random.nextInt(10);
          default -> quoted(CELLS[random.nextInt(CELLS.length)]);
        };
    row.set(column, cell);
  }

  private static String quoted(String cell) {
    boolean plain = cell.indexOf('"') < 0 && cell.indexOf(',') < 0 && cell.indexOf('\n') < 0;
    return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }

  private void header(List<List<String>> rows) {
    List<String> names = rows.get(0);
    int column = random.nextInt(names.size());
    switch (random.nextInt(5)) {
      case 0 -> names.set(column, names.get(column) + "-x");
      case 1 -> names.set(column, names.get(random.nextInt(names.size())));
      case 2 -> names.remove(column);
      case 3 ->
          rows.forEach(
              row -> {
                if (column < row.size() && row.size() > 1) {
                  row.remove(column);
                }
              });
      default -> names.set(column, quoted(CELLS[random.nextInt(CELLS.length)]));
    }
  }

  private void rows(List<List<String>> rows) {
    int at = random.nextInt(rows.size());
    List<String> row = rows.get(at);
    switch (random.nextInt(7)) {
      case 0 -> rows.remove(at);
      case 1 -> rows.add(row);
      case 2 -> rows.subList(1, rows.size()).clear();
      case 3 -> row.add("1");
      case 4 -> row.remove(row.size() - 1);
      case 5 -> rows.add(at, List.of(""));
      default -> rows.subList(at, rows.size()).clear();
    }
  }
}
