package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tallywall.core.text.Shown;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A number, or several, as somebody types them: {@code 40}, {@code 20..80}, {@code 20..80/4} for
 * every fourth of these, {@code 20,40,60}.
 *
 * @param values the numbers from the lowest to the highest, each once
 */
record NumberRange(List<Integer> values) {
  private static final int HIGHEST = 9_999;
  private static final int MOST_LETTERS = 1_000;
  private static final Pattern PART =
      Pattern.compile("(\\d+)(?:\\s*(?:\\.\\.|-|\u2013)\\s*(\\d+)(?:\\s*/\\s*(\\d+))?)?");

  NumberRange {
    values = List.copyOf(values);
  }

  /** Reads one from the command line. */
  static final class Reader implements ITypeConverter<NumberRange> {
    @Override
    public NumberRange convert(String text) {
      return read(text);
    }
  }

  static NumberRange read(String text) {
    if (text.length() > MOST_LETTERS) {
      throw unreadable(text);
    }
    TreeSet<Integer> values = new TreeSet<>();
    for (String part : text.split(",", -1)) {
      Matcher found = PART.matcher(part.strip());
      if (!found.matches()) {
        throw unreadable(text);
      }
      int from = number(found.group(1));
      int to = found.group(2) == null ? from : number(found.group(2));
      if (to < from) {
        throw new TypeConversionException(
            "%s goes downward; write %s..%s".formatted(Shown.word(part.strip()), to, from));
      }
      int step = found.group(3) == null ? 1 : number(found.group(3));
      if (step == 0) {
        throw new TypeConversionException(
            "%s takes every 0th number; write 1 or more after the slash"
                .formatted(Shown.word(part.strip())));
      }
      for (int value = from; value <= to; value += step) {
        values.add(value);
      }
    }
    return new NumberRange(new ArrayList<>(values));
  }

  private static int number(String digits) {
    String bare = digits.replaceFirst("^0+(?=.)", "");
    if (bare.length() > 4) {
      throw new TypeConversionException(
          "%s is too large; the largest number here is %s".formatted(Shown.word(digits), HIGHEST));
    }
    return Integer.parseInt(bare);
  }

  private static TypeConversionException unreadable(String text) {
    return new TypeConversionException(
        "\"%s\" is no number; write one as in 40, a range as in 20..80, or several as in 20,40,60"
            .formatted(Shown.word(text)));
  }

  int lowest() {
    return values.get(0);
  }

  int highest() {
    return values.get(values.size() - 1);
  }

  /** Whether it is more than one number. */
  boolean several() {
    return values.size() > 1;
  }
}
