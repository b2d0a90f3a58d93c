package org.tallywall.core.record;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.zip.GZIPInputStream;

/**
 * Reads a file of records, one game a line, packed with gzip where its name ends in {@code .gz}.
 */
public final class RecordFile implements Closeable {
  private final Path file;
  private final BufferedReader lines;
  private long line;

  private RecordFile(Path file, BufferedReader lines) {
    this.file = file;
    this.lines = lines;
  }

  /**
   * Opens a file.
   *
   * @param file the file
   * @return the open file
   * @throws IOException if it cannot be read
   */
  public static RecordFile open(Path file) throws IOException {
    InputStream raw = Files.newInputStream(file);
    try {
      boolean packed = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".gz");
      InputStream plain = packed ? new GZIPInputStream(raw, 1 << 16) : raw;
      return new RecordFile(
          file, new BufferedReader(new InputStreamReader(plain, StandardCharsets.UTF_8)));
    } catch (IOException broken) {
      raw.close();
      throw broken;
    }
  }

  /**
   * The next record.
   *
   * @return the record, or null at the end
   * @throws IOException if the file cannot be read on
   * @throws org.tallywall.core.text.FaultyFileException if the line is no record
   */
  public GameRecord next() throws IOException {
    String text = lines.readLine();
    line++;
    while (text != null && text.isBlank()) {
      text = lines.readLine();
      line++;
    }
    return text == null ? null : RecordReader.read(file + " game line " + line, text);
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
