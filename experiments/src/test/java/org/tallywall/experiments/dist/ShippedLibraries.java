package org.tallywall.experiments.dist;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * The libraries whose classes are in the program's jar, found by looking: each jar on the path of
 * the tests that has one of those classes.
 */
final class ShippedLibraries {

  private ShippedLibraries() {}

  /** The files of each library, by the name of its jar without ".jar". */
  static Map<String, Path> jars() throws IOException {
    Set<String> program = ZipFiles.program().keySet();
    Map<String, Path> jars = new TreeMap<>();
    for (Path jar : jarsOfTheTests().toList()) {
      if (hasClassOf(program, jar)) {
        jars.put(jar.getFileName().toString().replaceFirst("\\.jar$", ""), jar);
      }
    }
    return jars;
  }

  /** Whether a file of the program's jar is a class, and not one of this project's. */
  static boolean isLibraryClass(String name) {
    return name.endsWith(".class") && !name.startsWith("org/tallywall/");
  }

  private static boolean hasClassOf(Set<String> program, Path jar) throws IOException {
    try (ZipFile files = new ZipFile(jar.toFile())) {
      return files.stream()
          .map(ZipEntry::getName)
          .anyMatch(name -> isLibraryClass(name) && program.contains(name));
    }
  }

  private static Stream<Path> jarsOfTheTests() {
    return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
        .filter(place -> place.endsWith(".jar"))
        .map(Path::of)
        .filter(Files::isRegularFile);
  }
}
