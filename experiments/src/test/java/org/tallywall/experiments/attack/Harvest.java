package org.tallywall.experiments.attack;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.tallywall.experiments.attack.JsonTree.Kind;

/**
 * Names, values and words of valid files: a spoiled file that is nearly right needs the right
 * words.
 */
final class Harvest {
  private final Set<String> names = new LinkedHashSet<>();
  private final Set<String> values = new LinkedHashSet<>();
  private final Set<String> words = new LinkedHashSet<>();
  private final Set<String> lines = new LinkedHashSet<>();
  private final List<JsonTree> trees = new ArrayList<>();

  private List<String> nameList = List.of();
  private List<String> valueList = List.of();
  private List<String> wordList = List.of();
  private List<String> lineList = List.of();

  Harvest json(JsonTree seed) {
    for (JsonTree tree : seed.all()) {
      names.addAll(tree.names);
      if (tree.kind == Kind.VALUE) {
        values.add(tree.text);
      }
    }
    seed.all().stream().filter(tree -> tree.all().size() < 60).forEach(trees::add);
    return this;
  }

  Harvest text(String seed) {
    seed.lines()
        .filter(line -> !line.isBlank())
        .forEach(
            line -> {
              lines.add(line);
              words.addAll(List.of(line.strip().split("[ ,]+")));
            });
    return this;
  }

  /** Everything has been given. */
  Harvest done() {
    words.addAll(names);
    nameList = List.copyOf(names);
    valueList = List.copyOf(values);
    wordList = List.copyOf(words);
    lineList = List.copyOf(lines);
    return this;
  }

  List<String> names() {
    return nameList;
  }

  List<String> values() {
    return valueList;
  }

  List<String> words() {
    return wordList;
  }

  List<String> lines() {
    return lineList;
  }

  List<JsonTree> trees() {
    return trees;
  }
}
