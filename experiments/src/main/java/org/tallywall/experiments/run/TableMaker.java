package org.tallywall.experiments.run;

/** Makes what plays blocks, one for each thread. Safe for use by several threads. */
@FunctionalInterface
public interface TableMaker {
  /**
   * Makes a table.
   *
   * @param pulse shows whether the players still answer; it belongs to this table alone
   * @return what plays the blocks of one thread
   */
  BlockPlayer make(Pulse pulse);
}
