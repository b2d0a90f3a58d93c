package org.tallywall.experiments.attack;

import java.util.List;
import java.util.SplittableRandom;

/** The choices of one attack: the same for the same seed and number. */
final class Chance {
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private final SplittableRandom random;

  Chance(long seed, long number) {
    this.random = new SplittableRandom(seed * SPREAD ^ number * 0xBF58476D1CE4E5B9L);
  }

  /** A number from 0 up to but without the given one. */
  int below(int end) {
    return random.nextInt(end);
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  @SafeVarargs
  final <T> T of(T... from) {
    return from[random.nextInt(from.length)];
  }

  byte[] bytes(int length) {
    byte[] bytes = new byte[length];
    random.nextBytes(bytes);
    return bytes;
  }
}
