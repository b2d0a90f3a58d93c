package org.tallywall.reports.text;

import java.text.Normalizer;
import java.util.regex.Pattern;
import org.tallywall.reports.table.Visible;

/** Which letters a console can show. */
public enum Lettering {
  /**
   * Letters without accents, plain dashes and quotation marks: safe on any console. A letter that
   * has no such form becomes a question mark.
   */
  ASCII {
    @Override
    String spell(String text) {
      String bare = Normalizer.normalize(text, Normalizer.Form.NFKD);
      StringBuilder out = new StringBuilder();
      ACCENTS.matcher(bare).replaceAll("").codePoints().forEach(c -> out.append(plain(c)));
      return out.toString();
    }
  },

  /** Every letter as it is. */
  UNICODE {
    @Override
    String spell(String text) {
      return Normalizer.normalize(text, Normalizer.Form.NFC);
    }
  };

  private static final Pattern ACCENTS = Pattern.compile("\\p{Mn}+");
  private static final Pattern BLANKS = Pattern.compile("[\\p{Z}\\t\\n\\r]+");
  private static final Pattern UNSEEN = Pattern.compile("[\\p{Cf}\\p{Cs}]+");

  /**
   * Makes a text safe for one line of a console: tabs and line breaks become one space, letters
   * that nobody sees become visible as {@link Visible} says.
   *
   * @param text any text
   * @return one line without blanks at its ends
   */
  public String line(String text) {
    String seen = Visible.text(text);
    return spell(UNSEEN.matcher(BLANKS.matcher(seen).replaceAll(" ")).replaceAll("")).strip();
  }

  abstract String spell(String text);

  private static String plain(int letter) {
    return switch (letter) {
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212' -> "-";
      case '\u2018', '\u2019', '\u201a' -> "'";
      case '\u201c', '\u201d', '\u201e', '\u00ab', '\u00bb' -> "\"";
      case '\u00d7' -> "x";
      case '\u00df' -> "ss";
      case '\u00c6' -> "AE";
      case '\u00e6' -> "ae";
      case '\u00d8' -> "O";
      case '\u00f8' -> "o";
      case '\u0141' -> "L";
      case '\u0142' -> "l";
      default -> letter < 0x7f ? Character.toString(letter) : "?";
    };
  }
}
