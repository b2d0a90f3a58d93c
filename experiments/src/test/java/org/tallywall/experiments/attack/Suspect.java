package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.List;

/** Where in the program a fault of its own arose. */
final class Suspect {
  private Suspect() {}

  /** The error and the first places of the program, or empty where nothing was thrown. */
  static String of(Lane lane, Attack attack, List<String> broken) {
    String first = broken.get(0);
    if (first.startsWith("thrown") || first.startsWith("no answer")) {
      return first;
    } else if (!first.startsWith("fault of its own") && !first.startsWith("memory")) {
      return "";
    }
    List<String> words = new ArrayList<>(attack.words());
    words.add("--debug");
    List<String> trace = lane.put(attack.typed(words)).err().text().lines().toList();
    String error =
        trace.stream()
            .filter(line -> line.matches("\\S*(Exception|Error).*"))
            .findFirst()
            .orElse("?");
    List<String> places =
        trace.stream()
            .filter(line -> line.contains("at org.tallywall") && !line.contains(".cli.Keyboard"))
            .limit(3)
            .map(
                line ->
                    line.strip().replaceAll("at org\\.tallywall\\.", "").replaceAll("\\(|\\)", " "))
            .toList();
    return Promise.start(error) + " | " + String.join("< ", places);
  }
}
