package org.tallywall.experiments.paper;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.tallywall.core.random.StreamKey;
import org.tallywall.reports.results.ThisProgram;

/**
 * What is to be made of results.
 *
 * @param formats which kinds of paper
 * @param withCard whether the lines of the card are printed
 * @param version the version of this program
 * @param trustJars whether code of the jars that the results name may run
 * @param stop asked between papers: whether no more are to be made
 */
public record PaperOptions(
    Set<PaperFormat> formats,
    boolean withCard,
    String version,
    boolean trustJars,
    BooleanSupplier stop) {
  /**
   * Copies the kinds.
   *
   * @param formats which kinds of paper
   * @param withCard whether the lines of the card are printed
   * @param version the version of this program
   * @param trustJars whether code of the jars that the results name may run
   * @param stop asked between papers: whether no more are to be made
   */
  public PaperOptions {
    formats = Set.copyOf(formats);
  }

  /**
   * Some kinds of paper, made to the end; no jar may run.
   *
   * @param formats which kinds of paper
   * @param withCard whether the lines of the card are printed
   * @param version the version of this program
   */
  public PaperOptions(Set<PaperFormat> formats, boolean withCard, String version) {
    this(formats, withCard, version, false, () -> false);
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

  /**
   * The same papers, for which jars may run.
   *
   * @param trusts whether code of the jars that the results name may run
   * @return the options
   */
  public PaperOptions trusting(boolean trusts) {
    return new PaperOptions(formats, withCard, version, trusts, stop);
  }

  /**
   * The same papers as long as nobody wants to stop.
   *
   * @param wanted whether no more papers are to be made
   * @return the options
   */
  public PaperOptions until(BooleanSupplier wanted) {
    return new PaperOptions(formats, withCard, version, trustJars, wanted);
  }

  /** The program that makes the papers. */
  ThisProgram program() {
    return new ThisProgram(version, StreamKey.STREAM_VERSION);
  }

  boolean wants(PaperFormat format) {
    return formats.contains(format);
  }
}
