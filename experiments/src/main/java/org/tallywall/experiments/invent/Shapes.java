package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The sizes of groups of which hands are made, in an irregular order. */
final class Shapes {
  private static final int WHOLE = 14;
  private static final int TRIES = 20;

  private static final List<List<Integer>> PLAIN =
      List.of(List.of(4, 4, 4, 2), List.of(4, 4, 3, 3), List.of(4, 3, 3, 2, 2));

  private static final List<List<Integer>> FULL =
      List.of(
          List.of(4, 4, 4, 2),
          List.of(4, 4, 3, 3),
          List.of(4, 3, 3, 2, 2),
          List.of(4, 3, 3, 2, 2),
          List.of(3, 3, 3, 3, 2),
          List.of(4, 4, 2, 2, 2),
          List.of(4, 4, 3, 2, 1),
          List.of(3, 3, 3, 3, 1, 1));

  private static final List<List<Integer>> TALL =
      List.of(
          List.of(5, 5, 4),
          List.of(5, 4, 3, 2),
          List.of(5, 5, 2, 2),
          List.of(6, 4, 4),
          List.of(6, 3, 3, 2),
          List.of(6, 4, 2, 2));

  private Shapes() {}

  /** Sizes that add up to 14. */
  static List<Integer> whole(Luck luck, Level level) {
    return irregular(luck, luck.pick(level == Level.BEGINNERS ? PLAIN : FULL));
  }

  /** Sizes that add up to 14 with at least one of five or six. */
  static List<Integer> tall(Luck luck) {
    return irregular(luck, luck.pick(TALL));
  }

  /** Sizes that, with some tiles apart, add up to 14; none is a single. */
  static List<Integer> besides(Luck luck, int apart) {
    List<List<Integer>> choices = new ArrayList<>();
    fill(WHOLE - apart, 4, new ArrayList<>(), choices);
    return irregular(luck, luck.pick(choices));
  }

  private static void fill(
      int left, int largest, List<Integer> sizes, List<List<Integer>> choices) {
    if (left == 0) {
      choices.add(List.copyOf(sizes));
    }
    for (int size = Math.min(left, largest); size >= 2; size--) {
      sizes.add(size);
      fill(left - size, size, sizes, choices);
      sizes.remove(sizes.size() - 1);
    }
  }

  /** The same sizes in an order that does not read the same from both ends, where there is one. */
  static List<Integer> irregular(Luck luck, List<Integer> sizes) {
    List<Integer> order = luck.shuffled(sizes);
    for (int round = 0; round < TRIES && mirrored(order); round++) {
      order = luck.shuffled(sizes);
    }
    return order;
  }

  private static boolean mirrored(List<Integer> order) {
    List<Integer> reversed = new ArrayList<>(order);
    Collections.reverse(reversed);
    return order.size() > 1 && reversed.equals(order);
  }
}
