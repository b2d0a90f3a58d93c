package org.tallywall.experiments.review;

/**
 * The games of some worlds, one after each choice that is still in. Threads write the games of
 * different worlds; then they are read in their order.
 */
final class Round {
  static final byte OTHER = 0;
  static final byte WON = 1;
  static final byte THREW = 2;
  static final byte WALL = 3;

  private final int first;
  private final int worlds;
  private final int[][] points;
  private final byte[][] ends;
  private final int[][] lines;

  Round(int first, int worlds, int choices) {
    this.first = first;
    this.worlds = worlds;
    points = new int[choices][worlds];
    ends = new byte[choices][worlds];
    lines = new int[choices][worlds];
  }

  int first() {
    return first;
  }

  int worlds() {
    return worlds;
  }

  void set(int choice, int world, int gained, byte end, int line) {
    points[choice][world - first] = gained;
    ends[choice][world - first] = end;
    lines[choice][world - first] = line;
  }

  int points(int choice, int at) {
    return points[choice][at];
  }

  byte end(int choice, int at) {
    return ends[choice][at];
  }

  int line(int choice, int at) {
    return lines[choice][at];
  }
}
