package org.tallywall.experiments.cli;

import org.tallywall.core.random.StreamKey;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, and that of its random streams, on which every result depends. */
final class Version implements IVersionProvider {

  /** The version in the jar; classes that are not in a jar have none. */
  static String text() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "unpacked" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {
      "tallywall " + text() + " (random streams, version " + StreamKey.STREAM_VERSION + ")"
    };
  }
}
