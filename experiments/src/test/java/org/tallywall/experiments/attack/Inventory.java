package org.tallywall.experiments.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/** What is in a folder: names with what they are, and how long; links are not followed. */
final class Inventory {
  private Inventory() {}

  static Map<String, String> of(Path root) {
    Map<String, String> found = new TreeMap<>();
    walk(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes is) {
            found.put(name(root, folder) + "/", "folder");
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes is) throws IOException {
            String name = name(root, file);
            found.put(name, name.startsWith(Attack.ELSEWHERE) ? content(file, is) : kind(is));
            return FileVisitResult.CONTINUE;
          }
        });
    return found;
  }

  private static String name(Path root, Path file) {
    return root.relativize(file).toString();
  }

  private static String content(Path file, BasicFileAttributes is) throws IOException {
    return is.isRegularFile()
        ? new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
        : kind(is);
  }

  private static String kind(BasicFileAttributes is) {
    return is.isRegularFile() ? is.size() + " bytes" : is.isSymbolicLink() ? "link" : "other";
  }

  /** Empties a folder. */
  static void clear(Path root) {
    walk(
        root,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes is) throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, IOException trouble)
              throws IOException {
            if (!folder.equals(root)) {
              Files.delete(folder);
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }

  private static void walk(Path root, SimpleFileVisitor<Path> visitor) {
    try {
      Files.walkFileTree(root, visitor);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
