package org.tallywall.experiments.attack;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What an attack puts in a place of its folder. */
sealed interface Plant {

  /** A file. */
  record Bytes(byte[] bytes) implements Plant {}

  /** A symbolic link, to a place that is told from the folder of the attack. */
  record Link(String to) implements Plant {}

  /** An empty folder. */
  record Folder() implements Plant {}

  /** A pipe that nobody writes into. */
  record Pipe() implements Plant {}

  static Plant text(String text) {
    return new Bytes(text.getBytes(StandardCharsets.UTF_8));
  }

  /** Puts it there. */
  static void put(Plant plant, Path root, String name) throws IOException {
    Path place = root.resolve(name);
    Files.createDirectories(place.getParent());
    if (plant instanceof Bytes file) {
      Files.write(place, file.bytes());
    } else if (plant instanceof Link link) {
      Files.createSymbolicLink(place, root.resolve(link.to()));
    } else if (plant instanceof Folder) {
      Files.createDirectories(place);
    } else {
      pipe(place);
    }
  }

  private static void pipe(Path place) throws IOException {
    try {
      new ProcessBuilder("mkfifo", place.toString()).start().waitFor();
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
