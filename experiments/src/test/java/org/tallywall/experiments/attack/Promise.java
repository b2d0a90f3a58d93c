package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What holds of every answer, whatever was asked: an exit code that is promised, plain words, no
 * fault of the program's own, nothing that moves a terminal, not too much of it, and nothing left
 * half-written.
 */
final class Promise {
  private static final Set<Integer> CODES = Set.of(0, 1, 2, 130);
  private static final int WRONG_INPUT = 2;
  private static final long MOST_BYTES = Capture.KEPT;
  private static final long MOST_LINES = 1_000;
  private static final int LONGEST_LINE = 20_000;
  private static final int SHOWN = 160;

  /** At the beginning of a line, for elsewhere it may be what the input said. */
  private static final Pattern FAULT = Pattern.compile("(?m)^tallywall: internal error");

  private static final Pattern MEMORY = Pattern.compile("(?m)^(tallywall: )?not enough memory");

  private static final Pattern CLASS =
      Pattern.compile(
          "\\b(?:[a-z]\\w*\\.){2,}[A-Z]\\w+|\\b[A-Z]\\w+(?:Exception|Error)\\b"
              + "|\\.java:\\d+|(?m)^\\s+at [\\w.$/]+\\(|\\[Ljava|@[0-9a-f]{6,8}\\b");

  /** Commands that write one whole paper after another. */
  private static final Set<String> PAPERS = Set.of("report", "replay");

  /** What messages say as an example of a class. */
  private static final Set<String> EXAMPLES = Set.of("my.pkg.MyPlayer");

  private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}&&[^\\n]]");

  private Promise() {}

  /** Everything that does not hold, each in one line that begins with which promise it is. */
  static List<String> broken(Attack attack, Outcome outcome) {
    List<String> broken = new ArrayList<>();
    if (!outcome.stuck().isEmpty()) {
      return List.of("no answer: it is at " + outcome.stuck());
    }
    if (outcome.thrown() != null) {
      return List.of(
          "thrown: " + outcome.thrown() + " at " + Lane.where(outcome.thrown().getStackTrace()));
    }
    String out = outcome.out().text();
    String err = outcome.err().text();
    code(outcome, out, err, broken);
    String typed = attack.words() + attack.shown();
    plain("out", out, typed, broken);
    plain("err", err, typed, broken);
    bounded(outcome, err, broken);
    files(attack, outcome, broken);
    return broken;
  }

  private static void code(Outcome outcome, String out, String err, List<String> broken) {
    if (!CODES.contains(outcome.code())) {
      broken.add("exit code: " + outcome.code());
    }
    if (FAULT.matcher(err).find()) {
      broken.add("fault of its own: " + start(err));
    }
    if (MEMORY.matcher(err).find()) {
      broken.add("memory: " + start(err));
    }
    if (outcome.code() != 0 && err.isBlank() && out.isBlank()) {
      broken.add("no word: exit code " + outcome.code());
    }
  }

  private static void plain(String where, String text, String typed, List<String> broken) {
    Matcher control = CONTROL.matcher(text);
    if (control.find()) {
      int at = control.start();
      broken.add(
          "control character: U+%04X in %s: %s"
              .formatted(
                  (int) text.charAt(at), where, start(text.substring(Math.max(0, at - 60)))));
    }
    Matcher name = CLASS.matcher(text);
    while (name.find()) {
      if (!typed.contains(name.group().strip()) && !EXAMPLES.contains(name.group())) {
        broken.add(
            "inside of the program: " + name.group().strip() + " in " + where + ": " + start(text));
        return;
      }
    }
  }

  private static void bounded(Outcome outcome, String err, List<String> broken) {
    long bytes = outcome.out().bytes() + outcome.err().bytes();
    if (outcome.code() != 0 && bytes > MOST_BYTES) {
      broken.add("too much: " + bytes + " bytes for input that is refused");
    }
    if (outcome.err().lines() > MOST_LINES) {
      broken.add("too much: " + outcome.err().lines() + " lines of messages");
    }
    err.lines()
        .mapToInt(String::length)
        .filter(length -> length > LONGEST_LINE)
        .findFirst()
        .ifPresent(length -> broken.add("too much: a message of " + length + " letters"));
  }

  private static void files(Attack attack, Outcome outcome, List<String> broken) {
    Map<String, String> before = outcome.before();
    Map<String, String> after = outcome.after();
    for (String name : after.keySet()) {
      if (name.startsWith(Attack.ELSEWHERE) && !before.containsKey(name)) {
        broken.add("elsewhere: " + name + " is new");
      }
      if (name.endsWith(".part") && !attack.files().containsKey(name)) {
        broken.add("half-written: " + name);
      }
    }
    before.forEach(
        (name, content) -> {
          if (name.startsWith(Attack.ELSEWHERE) && !content.equals(after.get(name))) {
            broken.add("elsewhere: " + name + " is changed or gone");
          }
        });
    if (outcome.code() == WRONG_INPUT) {
      refused(attack, before, after, broken);
    }
  }

  /** Nothing is deleted and no folder is new; papers that were finished before may stay. */
  private static void refused(
      Attack attack, Map<String, String> before, Map<String, String> after, List<String> broken) {
    boolean papers = !attack.words().isEmpty() && PAPERS.contains(attack.words().get(0));
    Set<String> differ = new TreeSet<>(before.keySet());
    differ.removeAll(after.keySet());
    after.keySet().stream()
        .filter(name -> !before.containsKey(name) && (name.endsWith("/") || !papers))
        .forEach(differ::add);
    if (!differ.isEmpty()) {
      broken.add("refused, yet written or deleted: " + start(differ.toString()));
    }
  }

  /** What differs between two answers to one attack. */
  static List<String> differing(Outcome first, Outcome second) {
    boolean same =
        first.code() == second.code()
            && first.out().sum() == second.out().sum()
            && first.err().sum() == second.err().sum();
    return same
        ? List.of()
        : List.of("not the same twice: " + first.code() + " and " + second.code());
  }

  static String start(String text) {
    String line = text.strip().replaceAll("\\s+", " ").replaceAll("[^ -~]", "?");
    return line.length() > SHOWN ? line.substring(0, SHOWN) + " ..." : line;
  }
}
