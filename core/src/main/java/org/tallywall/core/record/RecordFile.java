package org.tallywall.core.record;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.FileLimits;
import org.tallywall.core.text.TextFile;

/**
 * Reads a file of records, one game a line, packed with gzip where its name ends in {@code .gz}. It
 * holds one record at a time, so the file may be of any size. What comes out has the form of a
 * record and nothing more; {@link CheckedRecords} says whether it is a game by the rules.
 */
public final class RecordFile implements Closeable {
  private final Path file;
  private final BoundedLines lines;

  private RecordFile(Path file, BoundedLines lines) {
    this.file = file;
    this.lines = lines;
  }

  /**
   * Opens a file.
   *
   * @param file the file
   * @return the open file
   * @throws IOException if it cannot be read
   * @throws FaultyFileException if it is a folder, a device or a pipe
   */
  public static RecordFile open(Path file) throws IOException {
    TextFile.requireRegular(file);
    InputStream raw = Files.newInputStream(file);
    try {
      boolean packed = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".gz");
      InputStream plain = packed ? new PackedLines(raw) : raw;
      return new RecordFile(
          file,
          new BoundedLines(
              new InputStreamReader(
                  plain,
                  StandardCharsets.UTF_8
                      .newDecoder()
                      .onMalformedInput(CodingErrorAction.REPORT)
                      .onUnmappableCharacter(CodingErrorAction.REPORT))));
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
   * @throws FaultyFileException if the line is no record, is longer than {@link
   *     FileLimits#LONGEST_LINE}, or something follows the end of the packed records
   */
  public GameRecord next() throws IOException {
    String text;
    try {
      text = lines.next();
    } catch (BoundedLines.TooLongException bomb) {
      throw fault("the line is longer than any record (" + FileLimits.LONGEST_LINE + " letters)");
    } catch (PackedLines.TrailingException trailing) {
      throw new FaultyFileException(
          file.toString(), "something follows the end of the packed records; take it out");
    } catch (CharacterCodingException binary) {
      throw fault("the line is not a text in UTF-8");
    }
    return text == null ? null : RecordReader.read(place(), text);
  }

  /**
   * Where the record read last stands.
   *
   * @return the file and the line, as messages name them
   */
  String place() {
    return file + " game line " + lines.number();
  }

  private FaultyFileException fault(String why) {
    return new FaultyFileException(place(), why);
  }

  @Override
  public void close() throws IOException {
    lines.close();
  }
}
