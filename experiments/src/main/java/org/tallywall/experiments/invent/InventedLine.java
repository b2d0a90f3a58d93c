package org.tallywall.experiments.invent;

import org.tallywall.core.card.Line;

/**
 * A line of an invented card.
 *
 * @param sketch as drawn
 * @param line what the sketch stands for, with every hand
 * @param concealed whether it must be kept concealed
 */
record InventedLine(LineSketch sketch, Line line, boolean concealed) {
  /** The same line, to be kept concealed. */
  InventedLine hidden() {
    return new InventedLine(sketch, line, true);
  }

  int value() {
    return Pricing.value(line, concealed);
  }

  /** Tiles in singles and pairs of its first hand. */
  int loose() {
    return Pricing.loose(line.hands().get(0));
  }
}
