package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.tallywall.experiments.error.FailedException;

/**
 * Writes files whole or not at all: a file grows under another name and takes its own at the end.
 */
public final class WholeFile {
  static final String PART = ".part";

  private WholeFile() {}

  /** Fills a file. */
  @FunctionalInterface
  public interface Filler {
    /**
     * Writes the file.
     *
     * @param part the name under which it grows
     * @throws IOException if it cannot be written
     */
    void fill(Path part) throws IOException;
  }

  /**
   * Writes a text in UTF-8, in place of an older file.
   *
   * @param file the file; its folder exists
   * @param text its text
   * @throws FailedException if it cannot be written; nothing is left behind
   */
  public static void write(Path file, String text) {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes, in place of an older file.
   *
   * @param file the file; its folder exists
   * @param bytes its content
   * @throws FailedException if it cannot be written; nothing is left behind
   */
  public static void write(Path file, byte[] bytes) {
    grow(file, part -> Files.write(part, bytes));
  }

  /**
   * Writes a file, in place of an older one.
   *
   * @param file the file; its folder exists
   * @param filler fills it under the name under which it grows
   * @throws FailedException if it cannot be written; nothing is left behind
   */
  public static void grow(Path file, Filler filler) {
    Path part = file.resolveSibling(file.getFileName() + PART);
    try {
      // Whatever lies there, be it a link that somebody planted, is not written through.
      Files.deleteIfExists(part);
      Files.createFile(part);
      try {
        filler.fill(part);
        force(part);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw unwritten(file, e);
    }
  }

  /** Waits until the disk has it, so that no failing machine leaves a name without its content. */
  private static void force(Path part) throws IOException {
    try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /**
   * Makes a folder where there is none yet.
   *
   * @param folder the folder
   * @return the same
   * @throws FailedException if it cannot be made, or is a link to another place
   */
  public static Path folder(Path folder) {
    Inside.refuseLink(folder);
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw unwritten(folder, e);
    }
  }

  /**
   * Says in plain words why a file could not be written.
   *
   * @param file the file
   * @param error what the machine said
   * @return the complaint
   */
  public static FailedException unwritten(Path file, IOException error) {
    return new FailedException("\"" + file + "\" could not be written: " + why(error), error);
  }

  static String why(IOException error) {
    if (error instanceof NoSuchFileException) {
      return "its folder does not exist";
    } else if (error instanceof AccessDeniedException) {
      return "this folder may not be written to";
    }
    String reason =
        error instanceof FileSystemException system ? system.getReason() : error.getMessage();
    return reason == null ? "the disk may be full" : reason;
  }
}
