package org.tallywall.experiments.invent;

import java.util.List;
import org.tallywall.core.card.Slide;
import org.tallywall.core.card.SuitChoice;

/**
 * A line as drawn, before it has a price.
 *
 * @param say what it is like, as its nickname
 * @param hands its hand, or its alternatives
 * @param slide how its digits move
 * @param where which numbers its letters take; empty for all
 * @param suits how its suit letters may be read
 * @param mirrored whether its first hand has a shape that reads the same from both ends
 */
record LineSketch(
    String say, List<String> hands, Slide slide, String where, SuitChoice suits, boolean mirrored) {
  /** A line without letters for numbers. */
  static LineSketch of(String say, List<TileBlock> blocks, Slide slide) {
    return of(say, blocks, slide, "");
  }

  /** A line with one hand. */
  static LineSketch of(String say, List<TileBlock> blocks, Slide slide, String where) {
    return new LineSketch(
        say + " " + TileBlock.shape(blocks),
        List.of(TileBlock.hand(blocks)),
        slide,
        where,
        SuitChoice.AS_WRITTEN,
        TileBlock.mirrored(blocks));
  }

  /** The same line with a further hand. */
  LineSketch or(List<TileBlock> blocks) {
    String other = TileBlock.hand(blocks);
    return hands.contains(other) || TileBlock.mirrored(blocks)
        ? this
        : new LineSketch(
            say + " or " + TileBlock.shape(blocks),
            List.of(hands.get(0), other),
            slide,
            where,
            suits,
            mirrored);
  }

  /** The same line, which may also be made in one suit. */
  LineSketch orOneSuit() {
    return new LineSketch(say, hands, slide, where, SuitChoice.OR_ONE, mirrored);
  }
}
