package org.tallywall.experiments.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small cards for tests of commands. */
final class Cards {
  static final String SMALL =
      """
      { "card": "Little Harbour test card", "edition": "for tests",
        "families": [
          { "family": "Ladders", "lines": [
            { "tiles": "2222x 33y 444x 555z 66y", "slide": "any", "value": 30, "say": "the pier" },
            { "tiles": "FF 333x 4444x 555y 66y", "value": 25 } ] },
          { "family": "Vanes", "lines": [
            { "tiles": "NNNN EEE (WWWW|SSSS) RRR", "value": 30 },
            { "tiles": "NEWS 111x 333y 5555z", "value": 35, "concealed": true } ] },
          { "family": "Couples", "lines": [
            { "tiles": "11x 33x 55x 77x 99x NN SS", "value": 50, "concealed": true,
              "jokers": false } ] } ] }
      """;

  private Cards() {}

  static String write(Path folder, String name, String text) {
    try {
      return Files.writeString(folder.resolve(name), text).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String small(Path folder) {
    return write(folder, "small.json", SMALL);
  }
}
