package org.tallywall.experiments.store;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.tallywall.experiments.error.FailedException;

/** Writes records, one a line. */
public final class RecordWriter implements AutoCloseable {
  private final Path file;
  private final OutputStream out;

  /**
   * Begins a file; a link in its place is not followed.
   *
   * @param file the file
   * @param packed whether it is packed with gzip
   * @throws FailedException if it cannot be written
   */
  public RecordWriter(Path file, boolean packed) {
    this.file = file;
    try {
      OutputStream raw =
          Files.newOutputStream(
              file,
              StandardOpenOption.CREATE,
              StandardOpenOption.TRUNCATE_EXISTING,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      this.out = new BufferedOutputStream(packed ? new GZIPOutputStream(raw) : raw, 1 << 16);
    } catch (IOException e) {
      throw WholeFile.unwritten(file, e);
    }
  }

  /**
   * Writes a whole file.
   *
   * @param file the file
   * @param packed whether it is packed with gzip
   * @param records one line of JSON each
   * @throws FailedException if it cannot be written
   */
  public static void write(Path file, boolean packed, List<String> records) {
    try (RecordWriter writer = new RecordWriter(file, packed)) {
      writer.write(records);
    }
  }

  /**
   * Writes records.
   *
   * @param records one line of JSON each
   * @throws FailedException if they cannot be written
   */
  public void write(List<String> records) {
    try {
      for (String record : records) {
        out.write(record.getBytes(StandardCharsets.UTF_8));
        out.write('\n');
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(file, e);
    }
  }

  /**
   * Ends the file.
   *
   * @throws FailedException if the rest cannot be written
   */
  @Override
  public void close() {
    try {
      out.close();
    } catch (IOException e) {
      throw WholeFile.unwritten(file, e);
    }
  }
}
