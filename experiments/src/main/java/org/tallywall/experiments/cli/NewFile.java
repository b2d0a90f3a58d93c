package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;

/** Writes what a command made into a new file, and never over one that is there. */
final class NewFile {
  private NewFile() {}

  /** Refuses a file that is there, before any work is done; null is no file. */
  static void refuse(Path file) {
    if (file != null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new WrongInputException("\"" + file + "\" exists already; name a new file");
    }
  }

  static void write(Path file, String text, Console console) {
    refuse(file);
    WholeFile.write(file, text);
    console.say("Wrote " + file);
  }
}
