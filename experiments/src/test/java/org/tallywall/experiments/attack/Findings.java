package org.tallywall.experiments.attack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts of attacks by kind and exit code, and the breaches, of which few of a sort are kept. */
final class Findings {
  /** Breaches of one sort that are written down. */
  private static final int KEPT = 3;

  private static final int NANOS = 1_000_000;

  private final Path saved;
  private final Map<String, Counts> counts = new TreeMap<>();
  private final Map<String, Integer> sorts = new LinkedHashMap<>();
  private final List<String> shown = new ArrayList<>();
  private long breaches;

  /** What is counted of a kind. */
  private static final class Counts {
    private final Map<Integer, Long> codes = new TreeMap<>();
    private long attacks;
    private long nanos;
    private long longest;
  }

  /**
   * Nothing yet.
   *
   * @param saved where breaching attacks are written down
   */
  Findings(Path saved) {
    this.saved = saved;
  }

  synchronized void count(Attack attack, Outcome outcome, long nanos) {
    Counts kind = counts.computeIfAbsent(attack.name(), name -> new Counts());
    kind.codes.merge(outcome.code(), 1L, Long::sum);
    kind.attacks++;
    kind.nanos += nanos;
    kind.longest = Math.max(kind.longest, nanos);
  }

  synchronized void breach(
      long seed, long number, Attack attack, List<String> broken, String suspect) {
    breaches++;
    String sort =
        (suspect.isEmpty() ? broken.get(0) : suspect)
            .replaceAll("[0-9]+", "0")
            .replaceAll("\"[^\"]*\"", "...");
    sort = sort.substring(0, Math.min(sort.length(), suspect.isEmpty() ? 45 : 300));
    int before = sorts.merge(attack.name() + ": " + sort, 1, Integer::sum);
    if (before <= KEPT) {
      String text =
          "seed %d, number %d (%s)\n  %s\n  %s%s"
              .formatted(
                  seed,
                  number,
                  attack.name(),
                  shortened(attack.command()),
                  String.join("\n  ", broken),
                  suspect.isEmpty() ? "" : "\n  suspected: " + suspect);
      shown.add(text);
      save(seed, number, attack, text);
    }
  }

  private void save(long seed, long number, Attack attack, String text) {
    Path folder = saved.resolve(attack.name().replaceAll("\\W+", "-") + "-" + seed + "-" + number);
    attack.with("why.txt", Plant.text(text)).save(folder);
  }

  private static String shortened(String command) {
    String plain = command.replaceAll("[^ -~]", "?");
    return plain.length() > 400 ? plain.substring(0, 400) + " ..." : plain;
  }

  synchronized long breaches() {
    return breaches;
  }

  /** The breaches that were kept, one after another. */
  synchronized String words() {
    return breaches + " breaches, saved below " + saved + "\n" + String.join("\n\n", shown);
  }

  /** How often each sort of breach was met. */
  synchronized String sorts() {
    StringBuilder text = new StringBuilder();
    sorts.forEach((sort, times) -> text.append("%6d  %s%n".formatted(times, sort)));
    return text.toString();
  }

  /** A line for each kind of attack. */
  synchronized String table() {
    StringBuilder text =
        new StringBuilder(
            "%-18s %9s %10s %10s  exit codes%n".formatted("kind", "attacks", "ms each", "longest"));
    counts.forEach(
        (name, kind) ->
            text.append(
                "%-18s %9d %10.2f %10.0f  %s%n"
                    .formatted(
                        name,
                        kind.attacks,
                        (double) kind.nanos / kind.attacks / NANOS,
                        (double) kind.longest / NANOS,
                        kind.codes)));
    return text.toString();
  }
}
