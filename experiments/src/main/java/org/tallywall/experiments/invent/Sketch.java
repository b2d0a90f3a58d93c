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
record Sketch(
    String say, List<String> hands, Slide slide, String where, SuitChoice suits, boolean mirrored) {
  /** A line without letters for numbers. */
  static Sketch of(String say, List<Block> blocks, Slide slide) {
    return of(say, blocks, slide, "");
  }

  /** A line with one hand. */
  static Sketch of(String say, List<Block> blocks, Slide slide, String where) {
    return new Sketch(
        say + " " + Block.shape(blocks),
        List.of(Block.hand(blocks)),
        slide,
        where,
        SuitChoice.AS_WRITTEN,
        Block.mirrored(blocks));
  }

  /** The same line with a further hand. */
  Sketch or(List<Block> blocks) {
    String other = Block.hand(blocks);
    return hands.contains(other) || Block.mirrored(blocks)
        ? this
        : new Sketch(
            say + " or " + Block.shape(blocks),
            List.of(hands.get(0), other),
            slide,
            where,
            suits,
            mirrored);
  }

  /** The same line, which may also be made in one suit. */
  Sketch orOneSuit() {
    return new Sketch(say, hands, slide, where, SuitChoice.OR_ONE, mirrored);
  }
}
