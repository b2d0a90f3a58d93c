package org.tallywall.experiments.paper;

import java.util.EnumSet;
import java.util.Set;
import org.tallywall.core.random.StreamKey;
import org.tallywall.reports.results.ThisProgram;

/**
 * What is to be made of results.
 *
 * @param formats which kinds of paper
 * @param withCard whether the lines of the card are printed
 * @param version the version of this program
 */
public record PaperOptions(Set<PaperFormat> formats, boolean withCard, String version) {
  /**
   * Copies the kinds.
   *
   * @param formats which kinds of paper
   * @param withCard whether the lines of the card are printed
   * @param version the version of this program
   */
  public PaperOptions {
    formats = Set.copyOf(formats);
  }

  /**
   * Everything, without the lines of the card.
   *
   * @param version the version of this program
   * @return the options
   */
  public static PaperOptions everything(String version) {
    return new PaperOptions(EnumSet.allOf(PaperFormat.class), false, version);
  }

  /** The program that makes the papers. */
  ThisProgram program() {
    return new ThisProgram(version, StreamKey.STREAM_VERSION);
  }

  boolean wants(PaperFormat format) {
    return formats.contains(format);
  }
}
