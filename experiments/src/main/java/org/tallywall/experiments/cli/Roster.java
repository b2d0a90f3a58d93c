package org.tallywall.experiments.cli;

import java.nio.file.Path;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.jar.JarShelf;
import org.tallywall.strategies.jar.JarTrust;
import picocli.CommandLine.Option;

/** The players that a command knows: those of the project and those of a user's own. */
final class Roster {
  @Option(
      names = "--plugins",
      paramLabel = "FOLDER",
      description = "Knows the players in the jars of this folder, too.")
  private Path plugins;

  /**
   * The list; jars are looked for from the folder in which the command is run.
   *
   * @param named says of jars that are named as players whether they may run; those of --plugins
   *     may
   */
  Catalog catalog(JarTrust named) {
    Catalog standard = Catalog.standard().with(new JarShelf(named)).in(Path.of(""));
    return plugins == null ? standard : standard.withPlugins(plugins);
  }
}
