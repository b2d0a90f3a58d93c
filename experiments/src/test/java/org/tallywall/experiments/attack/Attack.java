package org.tallywall.experiments.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A command with everything that it finds in its folder.
 *
 * @param name what it is called in a list
 * @param words what is typed; {@link #HERE} stands for its folder
 * @param files what is in the folder, by name
 */
record Attack(String name, List<String> words, Map<String, Plant> files) {
  /** Stands for the folder of the attack. */
  static final String HERE = "{here}";

  /** A folder beside the results that no command may touch, whatever links lead there. */
  static final String ELSEWHERE = "elsewhere/";

  private static final int SHOWN = 1_500;

  static Attack of(String name, Map<String, Plant> files, String... words) {
    return new Attack(name, List.of(words), files);
  }

  /** The same with other words. */
  Attack typed(List<String> other) {
    return new Attack(name, other, files);
  }

  /** The same with another file. */
  Attack with(String file, Plant plant) {
    Map<String, Plant> changed = new LinkedHashMap<>(files);
    changed.put(file, plant);
    return new Attack(name, words, changed);
  }

  /** The words for a folder. */
  String[] words(Path folder) {
    return words.stream().map(word -> word.replace(HERE, folder.toString())).toArray(String[]::new);
  }

  void plant(Path folder) {
    try {
      for (Map.Entry<String, Plant> file : files.entrySet()) {
        Plant.put(file.getValue(), folder, file.getKey());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The command as a shell takes it, from inside the folder. */
  String command() {
    return words.stream()
        .map(word -> word.replace(HERE + "/", ""))
        .map(word -> word.matches("[\\w./:,=-]+") ? word : "'" + word.replace("'", "'\\''") + "'")
        .collect(Collectors.joining(" ", "tallywall ", ""));
  }

  /** The files as far as a failed test shows them. */
  String shown() {
    return files.entrySet().stream()
        .filter(file -> file.getValue() instanceof Plant.Bytes)
        .map(file -> file.getKey() + ": " + start((Plant.Bytes) file.getValue()))
        .collect(Collectors.joining("\n"));
  }

  private static String start(Plant.Bytes file) {
    int length = file.bytes().length;
    String text =
        new String(file.bytes(), 0, Math.min(SHOWN, length), StandardCharsets.ISO_8859_1)
            .replaceAll("[^\\n -~]", "?");
    return length > SHOWN ? text + " ... (" + length + " bytes)" : text;
  }

  /** Writes it down, to be tried by hand. */
  void save(Path folder) {
    plant(folder);
    try {
      Files.writeString(folder.resolve("command.txt"), command() + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
