package org.tallywall.experiments.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Builds jars of players for tests, as a user would. */
final class Jars {
  /** The file of a jar that names its list of players. */
  static final String LIST = "META-INF/services/org.tallywall.strategies.catalog.PlayerSource";

  /** The source of {@code own.Plain}, a sound player for others to extend. */
  static final String SOUND_PLAYER =
      """
      package own;
      import org.tallywall.core.play.*;
      import org.tallywall.core.random.RandomStream;
      import org.tallywall.strategies.player.NearestPlayer;
      public class Plain implements Player {
        protected final NearestPlayer usual = new NearestPlayer();
        public boolean declares(SeatView v, RandomStream r) { return usual.declares(v, r); }
        public PassChoice pass(SeatView v, PassStep s, RandomStream r) { return usual.pass(v, s, r); }
        public boolean stops(SeatView v, RandomStream r) { return usual.stops(v, r); }
        public int courtesyNumber(SeatView v, RandomStream r) { return usual.courtesyNumber(v, r); }
        public int[] courtesyTiles(SeatView v, int n, RandomStream r) {
          return usual.courtesyTiles(v, n, r); }
        public ClaimChoice claim(SeatView v, RandomStream r) { return usual.claim(v, r); }
        public TurnChoice turn(SeatView v, RandomStream r) { return usual.turn(v, r); }
      }
      """;

  private Jars() {}

  /** Compiles all sources below a folder; gives the class files by their names in a jar. */
  static Map<String, byte[]> compiled(Path sources, Path classes) {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files =
        compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
      List<String> options =
          List.of(
              "--release",
              "17",
              "-proc:none",
              "-cp",
              System.getProperty("java.class.path"),
              "-d",
              Files.createDirectories(classes).toString());
      boolean done =
          compiler
              .getTask(
                  null,
                  files,
                  null,
                  options,
                  null,
                  files.getJavaFileObjectsFromPaths(below(sources, ".java")))
              .call();
      if (!done) {
        throw new AssertionError("the sources in " + sources + " do not compile");
      }
      return files(classes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The files below a folder by their names in a jar. */
  static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    for (Path file : below(folder, "")) {
      String name = folder.relativize(file).toString().replace('\\', '/');
      files.put(name, Files.readAllBytes(file));
    }
    return files;
  }

  private static List<Path> below(Path folder, String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> files = new ArrayList<>();
      all.filter(Files::isRegularFile)
          .filter(file -> file.toString().endsWith(ending))
          .forEach(files::add);
      return files;
    }
  }

  /** Writes a jar, its entries with a time stamp of their own. */
  static Path write(Path jar, Map<String, byte[]> files, long time) {
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        ZipEntry entry = new ZipEntry(file.getKey());
        entry.setTime(time);
        zip.putNextEntry(entry);
        zip.write(file.getValue());
        zip.closeEntry();
      }
      return jar;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
