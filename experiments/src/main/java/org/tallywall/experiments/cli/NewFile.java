package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;

/** Writes what a command made into a new file, and never over one that is there. */
final class NewFile {
  private NewFile() {}

  static void write(Path file, String text, Console console) {
    refuseExisting(file);
    WholeFile.write(file, text);
    console.say("Wrote " + file);
  }

  /** Refuses a file that is there, before any work is done. */
  static void refuseExisting(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new WrongInputException("\"" + file + "\" exists already; name a new file");
    }
  }
}
