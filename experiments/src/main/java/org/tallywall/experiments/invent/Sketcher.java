package org.tallywall.experiments.invent;

/** Draws lines of one family. */
interface Sketcher {
  /**
   * Draws a line. It need not be one that can be made, or be new: whoever asks looks.
   *
   * @param luck what decides
   * @param level for whom
   * @return the line
   */
  LineSketch draw(Luck luck, Level level);
}
