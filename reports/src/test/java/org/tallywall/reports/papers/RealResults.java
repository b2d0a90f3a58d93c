package org.tallywall.reports.papers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Folders of small runs of every design, a few of their rows left out. */
final class RealResults {
  static final List<String> DESIGNS =
      List.of("table", "arms", "until", "sweep", "round-robin", "branch");

  private RealResults() {}

  /** The texts of the files by their names. */
  static Map<String, String> files(String design) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> inside = Files.list(Path.of("src/test/resources/results", design))) {
      for (Path file : inside.toList()) {
        files.put(file.getFileName().toString(), Files.readString(file));
      }
    }
    return files;
  }

  /** Writes them; a file without text is taken away. */
  static Path write(Path folder, Map<String, String> files) throws IOException {
    Files.createDirectories(folder);
    for (Map.Entry<String, String> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      if (file.getValue() == null) {
        Files.deleteIfExists(path);
      } else {
        Files.writeString(path, file.getValue());
      }
    }
    return folder;
  }
}
