package org.tallywall.experiments.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.TypeConversionException;

/** Reads numbers and file names from the command line, and complains in plain words. */
final class Values {
  private Values() {}

  static void registerAt(CommandLine commands) {
    commands.registerConverter(Path.class, Values::path);
    commands.registerConverter(Long.class, Values::whole);
    commands.registerConverter(Integer.class, Values::small);
  }

  private static Path path(String text) {
    if (text.isBlank()) {
      throw new TypeConversionException("the name of the file is empty");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException impossible) {
      throw new TypeConversionException("\"" + text + "\" cannot be the name of a file");
    }
  }

  private static Long whole(String text) {
    if (!text.matches("[0-9]{1,40}")) {
      throw notWhole(text);
    }
    try {
      return Long.valueOf(text);
    } catch (NumberFormatException tooLarge) {
      throw new TypeConversionException(
          "\"" + text + "\" is too large; the largest is " + Long.MAX_VALUE);
    }
  }

  private static Integer small(String text) {
    if (!text.matches("[0-9]{1,40}")) {
      throw notWhole(text);
    }
    try {
      return Integer.valueOf(text);
    } catch (NumberFormatException tooLarge) {
      throw new TypeConversionException("\"" + text + "\" is too large");
    }
  }

  private static TypeConversionException notWhole(String text) {
    return new TypeConversionException(
        "\"" + text + "\" is not a whole number; write digits only, as in 2500");
  }
}
