package org.tallywall.reports.png;

import org.tallywall.reports.SampleFigures;

/** A program for {@link PngWriterTest}: draws a picture and prints what came of it. */
final class DrawOnce {
  private DrawOnce() {}

  public static void main(String[] arguments) {
    PngResult result = PngWriter.draw(SampleFigures.map());
    System.out.println(result instanceof PngResult.NotDrawn not ? not.reason() : "drawn");
  }
}
