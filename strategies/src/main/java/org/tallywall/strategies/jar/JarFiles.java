package org.tallywall.strategies.jar;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.tallywall.core.text.Sha256;
import org.tallywall.strategies.catalog.WrongPlayerException;

/** The files of a jar, read once and as a whole. */
final class JarFiles {
  /** Class files of Java 1 have the major version 45 (Java Virtual Machine Specification, 4.1). */
  private static final int BEFORE_JAVA_1 = 44;

  private static final int MAJOR_VERSION = 6;

  /** Most bytes that a jar may hold, unpacked: a player needs a few thousand. */
  static final long MOST_BYTES = 64L << 20;

  /** Most files that a jar may hold. */
  static final int MOST_FILES = 20_000;

  private JarFiles() {}

  /** Reads a jar; the files are in the order of their names. */
  static Map<String, byte[]> read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new WrongPlayerException(
          Files.isDirectory(file)
              ? "\"" + file + "\" is a folder; name a jar in it"
              : Files.exists(file)
                  ? "\"" + file + "\" is a device or a pipe; name a jar on a disk"
                  : "there is no jar \"" + file + "\"; check its name and folder");
    }
    Map<String, byte[]> files = new TreeMap<>();
    long room = MOST_BYTES;
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        if (!entry.isDirectory()) {
          try (InputStream content = zip.getInputStream(entry)) {
            byte[] bytes = content.readNBytes((int) Math.min(room + 1, Integer.MAX_VALUE));
            room -= bytes.length;
            files.put(entry.getName(), bytes);
          }
        }
        if (room < 0 || files.size() > MOST_FILES) {
          throw new WrongPlayerException(
              "\"%s\" holds more than a jar with players may: %s files or %s MiB when unpacked"
                  .formatted(file, MOST_FILES, MOST_BYTES >> 20));
        }
      }
    } catch (ZipException damaged) {
      throw new WrongPlayerException("\"" + file + "\" is not a jar, or is damaged", damaged);
    } catch (IOException unreadable) {
      throw new WrongPlayerException("\"" + file + "\" cannot be read", unreadable);
    }
    checkVersions(file, files);
    return Collections.unmodifiableMap(files);
  }

  /** Classes for a newer Java would break a game only when they are needed; so look first. */
  private static void checkVersions(Path file, Map<String, byte[]> files) {
    int newest = 0;
    for (Map.Entry<String, byte[]> entry : files.entrySet()) {
      boolean counts =
          entry.getKey().endsWith(".class") && !entry.getKey().startsWith("META-INF/versions/");
      if (counts && entry.getValue().length > MAJOR_VERSION + 1) {
        int major = ByteBuffer.wrap(entry.getValue()).getShort(MAJOR_VERSION);
        newest = Math.max(newest, major - BEFORE_JAVA_1);
      }
    }
    int here = Runtime.version().feature();
    if (newest > here) {
      throw new WrongPlayerException(
          "\"%s\" was built for Java %s and this is Java %s; build it with --release %s, or start tallywall with Java %s"
              .formatted(file, newest, here, Math.min(here, 17), newest));
    }
  }

  /** The digest of all names and contents. */
  static String digest(Map<String, byte[]> files) {
    StringBuilder all = new StringBuilder();
    files.forEach(
        (name, content) -> all.append(Sha256.of(content)).append(' ').append(name).append('\n'));
    return Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8));
  }
}
