package org.tallywall.experiments.cli;

import java.nio.file.Path;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.jar.JarShelf;
import picocli.CommandLine.Option;

/** The players that a command knows: those of the project and those of a user's own. */
final class Roster {
  @Option(
      names = "--plugins",
      paramLabel = "FOLDER",
      description = "Knows the players in the jars of this folder, too.")
  private Path plugins;

  /** The list; jars are looked for from the folder in which the command is run. */
  Catalog catalog() {
    Catalog standard = Catalog.standard().with(new JarShelf()).in(Path.of(""));
    return plugins == null ? standard : standard.withPlugins(plugins);
  }
}
