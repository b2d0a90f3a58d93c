package org.tallywall.core.text;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Files in which other programs keep what they write: whoever hands one in has not yet saved it as
 * text. Seen by the name, or by the first bytes.
 */
final class OtherFormat {
  private static final String SHEET = "a spreadsheet";
  private static final String DOCUMENT = "a document of a word processor";
  private static final String PDF = "a PDF";
  private static final String EITHER = "a spreadsheet or a document";

  private static final Map<String, String> BY_ENDING =
      Map.ofEntries(
          Map.entry("xlsx", SHEET),
          Map.entry("xls", SHEET),
          Map.entry("xlsm", SHEET),
          Map.entry("ods", SHEET),
          Map.entry("numbers", SHEET),
          Map.entry("docx", DOCUMENT),
          Map.entry("doc", DOCUMENT),
          Map.entry("odt", DOCUMENT),
          Map.entry("rtf", DOCUMENT),
          Map.entry("pages", DOCUMENT),
          Map.entry("pdf", PDF));

  private OtherFormat() {}

  /** What the first bytes of a file say. */
  private record Start(byte[] bytes, String what) {
    static Start of(String text, String what) {
      return new Start(text.getBytes(StandardCharsets.ISO_8859_1), what);
    }

    boolean begins(byte[] file) {
      return file.length >= bytes.length
          && Arrays.equals(file, 0, bytes.length, bytes, 0, bytes.length);
    }
  }

  private static final List<Start> STARTS =
      List.of(
          Start.of("PK\u0003\u0004", EITHER),
          Start.of("\u00D0\u00CF\u0011\u00E0", EITHER),
          Start.of("{\\rtf", DOCUMENT),
          Start.of("%PDF", PDF));

  /**
   * What a file is that is not plain text.
   *
   * @param name the file's name
   * @param bytes what it holds
   * @return as in "a spreadsheet", or null where neither name nor first bytes say so
   */
  static String of(String name, byte[] bytes) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    String what = BY_ENDING.get(ending);
    return what != null
        ? what
        : STARTS.stream()
            .filter(start -> start.begins(bytes))
            .map(Start::what)
            .findFirst()
            .orElse(null);
  }
}
