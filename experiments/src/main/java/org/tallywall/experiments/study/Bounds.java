package org.tallywall.experiments.study;

/**
 * How large a study may be. The bounds are far above what anybody can read the results of, and keep
 * a slip of the pen from filling the memory.
 */
public final class Bounds {
  /** Most ways of playing that a study compares, and most values of a sweep. */
  public static final int MOST_WAYS = 200;

  /** Most players of a round-robin: they make 10,626 tables of four. */
  public static final int MOST_PLAYERS = 24;

  /** Most situations that a study of a branch tells apart. */
  public static final int MOST_SITUATIONS = 2_500;

  /** Most deals that may be set aside; a run in which players spoil more says nothing of them. */
  public static final long MOST_FAULTS = 10_000;

  private Bounds() {}
}
