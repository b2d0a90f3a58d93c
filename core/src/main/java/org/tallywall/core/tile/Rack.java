package org.tallywall.core.tile;

import java.util.Arrays;

/**
 * A handful of tiles, counted by kind. It can be changed and is not safe for use by several
 * threads; it does not know how many copies a kind has.
 */
public final class Rack {
  private final int[] counts = new int[Tile.KINDS];
  private int total;
  private long kinds;

  /** An empty rack. */
  public Rack() {}

  /**
   * A rack of the given tiles.
   *
   * @param kinds kinds, 0 to 35, in any order
   * @return a new rack
   */
  public static Rack of(int... kinds) {
    Rack rack = new Rack();
    for (int kind : kinds) {
      rack.add(kind);
    }
    return rack;
  }

  /**
   * How many tiles of a kind are held.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  public int held(int kind) {
    return counts[kind];
  }

  /**
   * How many tiles are held in all.
   *
   * @return 0 or more
   */
  public int total() {
    return total;
  }

  /**
   * How many jokers are held.
   *
   * @return 0 or more
   */
  public int jokers() {
    return counts[Tile.JOKER];
  }

  /**
   * Which kinds are held.
   *
   * @return a bit for each kind of which there is a tile, bit 35 for the joker
   */
  public long kinds() {
    return kinds;
  }

  /**
   * Adds one tile.
   *
   * @param kind its kind, 0 to 35
   */
  public void add(int kind) {
    add(kind, 1);
  }

  /**
   * Adds several tiles of one kind.
   *
   * @param kind their kind, 0 to 35
   * @param number how many, 0 or more
   */
  public void add(int kind, int number) {
    counts[kind] += number;
    total += number;
    note(kind);
  }

  /**
   * Takes one tile out.
   *
   * @param kind its kind, 0 to 35
   * @throws IllegalStateException if none is held
   */
  public void remove(int kind) {
    remove(kind, 1);
  }

  /**
   * Takes several tiles of one kind out.
   *
   * @param kind their kind, 0 to 35
   * @param number how many, 0 or more
   * @throws IllegalStateException if fewer are held
   */
  public void remove(int kind, int number) {
    if (counts[kind] < number) {
      throw new IllegalStateException(
          "the rack holds " + counts[kind] + " of " + Tile.symbol(kind) + ", not " + number);
    }
    counts[kind] -= number;
    total -= number;
    note(kind);
  }

  private void note(int kind) {
    long bit = 1L << kind;
    kinds = counts[kind] > 0 ? kinds | bit : kinds & ~bit;
  }

  /**
   * Whether another rack holds all tiles of this one.
   *
   * @param other the other rack
   * @return true if it holds as many of each kind, or more
   */
  public boolean isPartOf(Rack other) {
    boolean part = (kinds & ~other.kinds) == 0;
    for (long left = kinds; part && left != 0; left &= left - 1) {
      int kind = Long.numberOfTrailingZeros(left);
      part = counts[kind] <= other.counts[kind];
    }
    return part;
  }

  /** Takes all tiles out. */
  public void clear() {
    Arrays.fill(counts, 0);
    total = 0;
    kinds = 0;
  }

  /**
   * Makes this rack hold what another holds.
   *
   * @param other the rack to copy
   */
  public void set(Rack other) {
    System.arraycopy(other.counts, 0, counts, 0, Tile.KINDS);
    total = other.total;
    kinds = other.kinds;
  }

  /**
   * A rack of its own with the same tiles.
   *
   * @return the copy
   */
  public Rack copy() {
    Rack copy = new Rack();
    copy.set(this);
    return copy;
  }

  /**
   * The tiles in the order of kinds.
   *
   * @return a fresh array of kinds, of length {@link #total()}
   */
  public int[] tiles() {
    int[] all = new int[total];
    int at = 0;
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      for (int copy = 0; copy < counts[kind]; copy++) {
        all[at++] = kind;
      }
    }
    return all;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rack rack && kinds == rack.kinds && Arrays.equals(counts, rack.counts);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(counts);
  }

  /** The rack in the notation, as in {@code 113b 99d S RG0 FF JJJ}. */
  @Override
  public String toString() {
    return TileText.print(this);
  }
}
