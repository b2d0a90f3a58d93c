package org.tallywall.experiments.attack;

import java.util.List;
import org.tallywall.experiments.attack.JsonTree.Kind;

/** Spoils JSON as a tree: mostly it stays JSON, and much of it stays right. */
final class JsonSpoiler {
  private static final int MANY = 300;

  private final Harvest harvest;
  private final TextSpoiler letters;

  /**
   * A spoiler.
   *
   * @param harvest names and values of valid files, to be put where others stood
   */
  JsonSpoiler(Harvest harvest) {
    this.harvest = harvest;
    this.letters = new TextSpoiler(harvest);
  }

  /** A spoiled copy, as text. */
  String spoil(JsonTree seed, Chance chance) {
    JsonTree tree = seed.copy();
    for (int times = chance.oneIn(4) ? 2 : 1; times > 0; times--) {
      once(tree, chance);
    }
    String text = tree.toString();
    return chance.oneIn(20) ? letters.edit(text, chance) : text;
  }

  private void once(JsonTree root, Chance chance) {
    JsonTree tree = chance.pick(root.all());
    if (tree.kind == Kind.VALUE) {
      value(tree, chance);
    } else if (tree.parts.isEmpty()) {
      tree.become(JsonTree.value(chance.pick(Hostile.VALUES)));
    } else {
      whole(tree, chance);
    }
  }

  private void value(JsonTree value, Chance chance) {
    switch (chance.below(6)) {
      case 0, 1 -> value.text = chance.pick(Hostile.VALUES);
      case 2 -> value.text = chance.pick(harvest.values());
      case 3 -> value.text = near(value.text, chance);
      case 4 -> value.become(chance.pick(harvest.trees()));
      default -> wrap(value, chance.of(Kind.ITEMS, Kind.FIELDS), chance);
    }
  }

  /** A number beside the one that stood there, or a text with some letters changed. */
  private String near(String text, Chance chance) {
    if (text.length() > 1 && text.startsWith("\"")) {
      String inside = text.substring(1, text.length() - 1);
      return "\"" + letters.edit(inside, chance) + "\"";
    }
    return switch (chance.below(5)) {
      case 0 -> "-" + text;
      case 1 -> text + "0";
      case 2 -> text + ".5";
      case 3 -> "\"" + text + "\"";
      default -> text + "e" + chance.pick(Hostile.NUMBERS);
    };
  }

  private static void wrap(JsonTree tree, Kind kind, Chance chance) {
    JsonTree around = JsonTree.of(kind);
    around.parts.add(tree.copy());
    if (kind == Kind.FIELDS) {
      around.names.add(chance.pick(Hostile.TEXTS));
    }
    tree.become(around);
  }

  private void whole(JsonTree tree, Chance chance) {
    int at = chance.below(tree.parts.size());
    int other = chance.below(tree.parts.size());
    switch (chance.below(9)) {
      case 0 -> tree.remove(at);
      case 1 -> again(tree, at, 1);
      case 2 -> again(tree, at, chance.oneIn(10) ? MANY : 2 + chance.below(6));
      case 3 -> rename(tree, at, chance);
      case 4 -> swap(tree, at, other);
      case 5 -> tree.parts.get(at).become(chance.pick(harvest.trees()));
      case 6 -> put(tree, chance.pick(harvest.names()), chance.pick(harvest.trees()).copy());
      case 7 -> tree.become(JsonTree.value(chance.pick(Hostile.VALUES)));
      default -> otherKind(tree);
    }
  }

  private static void again(JsonTree tree, int at, int times) {
    for (int time = 0; time < times; time++) {
      put(tree, tree.kind == Kind.FIELDS ? tree.names.get(at) : "", tree.parts.get(at).copy());
    }
  }

  private static void put(JsonTree tree, String name, JsonTree part) {
    if (tree.kind == Kind.FIELDS) {
      tree.names.add(name);
    }
    tree.parts.add(part);
  }

  private void rename(JsonTree tree, int at, Chance chance) {
    if (tree.kind == Kind.FIELDS) {
      List<String> from = chance.oneIn(3) ? Hostile.TEXTS : harvest.names();
      tree.names.set(at, chance.pick(from));
    }
  }

  private static void swap(JsonTree tree, int at, int other) {
    JsonTree held = tree.parts.get(at);
    tree.parts.set(at, tree.parts.get(other));
    tree.parts.set(other, held);
  }

  private static void otherKind(JsonTree tree) {
    if (tree.kind == Kind.FIELDS) {
      tree.kind = Kind.ITEMS;
      tree.names.clear();
    } else {
      tree.kind = Kind.FIELDS;
      for (int at = 0; at < tree.parts.size(); at++) {
        tree.names.add("n" + at);
      }
    }
  }
}
