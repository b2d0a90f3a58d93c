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
      description = "Adds the players in the jars of this folder.")
  private Path plugins;

  private final JarShelf shelf = new JarShelf();
  private Catalog known;

  /**
   * The list; jars are looked for from the folder in which the command is run. However often it is
   * asked for, each jar is read once.
   *
   * @param named says of jars that are named as players whether they may run; those of --plugins
   *     may
   */
  Catalog catalog(JarTrust named) {
    if (known == null) {
      Catalog standard = Catalog.standard().with(shelf).in(Path.of(""));
      known = plugins == null ? standard : standard.withPlugins(plugins);
    }
    return known.with(shelf.under(named));
  }
}
