package org.tallywall.experiments.invent;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.random.RandomStream;

/** The random choices that a drawn card is made of. */
final class Luck {
  private final RandomStream stream;

  Luck(RandomStream stream) {
    this.stream = stream;
  }

  /** A whole number from 0 to {@code bound - 1}. */
  int below(int bound) {
    return stream.below(bound);
  }

  /** A whole number, both ends included. */
  int between(int least, int most) {
    return least + below(most - least + 1);
  }

  /** True once in so many times, on average. */
  boolean onceIn(int times) {
    return below(times) == 0;
  }

  <T> T pick(List<T> choices) {
    return choices.get(below(choices.size()));
  }

  /** The same things in random order. */
  <T> List<T> shuffled(List<T> things) {
    List<T> rest = new ArrayList<>(things);
    List<T> order = new ArrayList<>();
    while (!rest.isEmpty()) {
      order.add(rest.remove(below(rest.size())));
    }
    return order;
  }
}
