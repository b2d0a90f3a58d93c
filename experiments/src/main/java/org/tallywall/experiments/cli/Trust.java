package org.tallywall.experiments.cli;

import java.util.Map;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Option;

/**
 * Whether a command runs jars that a file names which may come from somebody else: a study, a
 * record or a results folder.
 */
final class Trust {
  private static final String REMEDY = "add --trust-jars";

  @Option(
      names = "--trust-jars",
      description =
          "Runs the jars of players that the files name. A jar is a program that can do anything"
              + " that you can; without this option, none is run.")
  private boolean trusted;

  /** Every jar that a file names, or none. */
  JarTrust named() {
    return trusted ? JarTrust.ALL : JarTrust.none(REMEDY);
  }

  /** Of the jars that a file names those that still are what was played, or none. */
  JarTrust played(Map<String, String> digests) {
    return trusted ? JarTrust.only(digests) : JarTrust.none(REMEDY);
  }

  boolean trusted() {
    return trusted;
  }
}
