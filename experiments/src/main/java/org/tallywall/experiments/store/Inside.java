package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.tallywall.experiments.error.FailedException;

/**
 * Places inside a results folder. The folder may come from somebody else, so nothing in it is
 * followed that could lead out of it.
 */
final class Inside {
  private Inside() {}

  /**
   * A file in a results folder by a name that stands in one of its files.
   *
   * @param home the folder
   * @param name the name, as in {@code charts/wins.svg}
   * @return the file; nothing where the name leads out of the folder or through a link
   */
  static Optional<Path> file(Path home, String name) {
    Path whole = home.toAbsolutePath().normalize();
    Path file;
    try {
      file = whole.resolve(name).normalize();
    } catch (InvalidPathException impossible) {
      return Optional.empty();
    }
    if (!file.startsWith(whole) || file.equals(whole)) {
      return Optional.empty();
    }
    for (Path at = file.getParent(); !at.equals(whole); at = at.getParent()) {
      if (!Files.isDirectory(at, LinkOption.NOFOLLOW_LINKS)) {
        return Optional.empty();
      }
    }
    return Optional.of(file);
  }

  /**
   * Refuses a folder that is a link to somewhere else.
   *
   * @param folder a folder in a results folder, whether it is there or not
   * @throws FailedException if it is a link
   */
  static void refuseLink(Path folder) {
    if (Files.isSymbolicLink(folder)) {
      throw new FailedException(
          "\""
              + folder
              + "\" is a link to another place, and nothing is written through it;"
              + " take the link away");
    }
  }

  /**
   * Deletes the files of a folder whose names fit a pattern; nothing where it is none or a link.
   */
  static void deleteFiles(Path folder, String pattern) throws IOException {
    if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      try (var files = Files.newDirectoryStream(folder, pattern)) {
        for (Path file : files) {
          if (!Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
            Files.delete(file);
          }
        }
      }
    }
  }
}
