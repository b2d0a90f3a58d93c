package org.tallywall.strategies.read;

/**
 * Which evidence about the others counts.
 *
 * @param exposures whether the lines that their exposures leave are worked out
 * @param discards whether it counts what they threw themselves and what went round unclaimed
 * @param passes whether it counts what they passed to the reader
 * @param blind how much nearer each tile that they passed on blind makes them seem, 0 to 1
 * @param tells whether everything that can be seen of them tells how near they are
 */
public record ReadSettings(
    boolean exposures, boolean discards, boolean passes, double blind, boolean tells) {
  /** All that is read usually. */
  public static final ReadSettings USUAL = new ReadSettings(true, true, true, 0, false);

  /**
   * Settings without tells.
   *
   * @param exposures whether the lines that their exposures leave are worked out
   * @param discards whether it counts what they threw themselves and what went round unclaimed
   * @param passes whether it counts what they passed to the reader
   * @param blind how much nearer each tile that they passed on blind makes them seem, 0 to 1
   */
  public ReadSettings(boolean exposures, boolean discards, boolean passes, double blind) {
    this(exposures, discards, passes, blind, false);
  }
}
