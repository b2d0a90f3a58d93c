package org.tallywall.experiments.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.rules.RuleMeaning;
import org.tallywall.core.rules.RuleMeanings;

/** The switches of the rules for somebody who looks one up. */
public final class RuleWords {
  private RuleWords() {}

  /**
   * What a switch may be set to, and what each value means.
   *
   * @param meaning the switch
   * @return a line for each word, and one for numbers; those not played yet say so
   */
  public static List<String> choices(RuleMeaning meaning) {
    List<String> lines = new ArrayList<>();
    meaning
        .words()
        .forEach(
            (word, means) ->
                lines.add(
                    word
                        + ": "
                        + means
                        + (meaning.rule().isLater(word) ? " (not played yet)" : "")));
    if (lines.isEmpty()) {
      lines.add(meaning.open() ? meaning.choices() : "only " + meaning.usual() + " is played yet");
    } else if (meaning.choices().contains("a whole number")) {
      lines.add("or " + meaning.choices().replaceFirst(".*(?=a whole number)", ""));
    }
    if (meaning.notYet().contains("whole number")) {
      lines.add("not played yet: " + meaning.notYet());
    }
    return lines;
  }

  /**
   * A switch in one line.
   *
   * @param meaning the switch
   * @return as in "wall.cold (OFF, NO_CLAIM; usually OFF)"
   */
  public static String summary(RuleMeaning meaning) {
    return meaning.key()
        + " ("
        + (meaning.open() ? meaning.choices() + "; usually " : "always ")
        + meaning.usual()
        + (meaning.notYet().isEmpty() ? "" : "; not played yet: " + meaning.notYet())
        + ")";
  }

  /**
   * Looks for switches.
   *
   * @param words one word or several with blanks between, large or small letters
   * @return the switches in whose name, meaning or values all of them stand
   */
  public static List<RuleMeaning> find(String words) {
    String[] wanted = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
    List<RuleMeaning> found = new ArrayList<>();
    for (RuleMeaning meaning : RuleMeanings.all()) {
      String text =
          (meaning.key() + " " + meaning.group().title() + " " + meaning.sentence() + " ")
              .concat(String.join(" ", choices(meaning)))
              .toLowerCase(Locale.ROOT);
      if (List.of(wanted).stream().allMatch(text::contains)) {
        found.add(meaning);
      }
    }
    return found;
  }

  /**
   * The switches that a word names.
   *
   * @param name the key of one, or how the keys of several begin, as in {@code charleston}
   * @return those, or none
   */
  public static List<RuleMeaning> named(String name) {
    return RuleMeanings.all().stream()
        .filter(meaning -> meaning.key().equals(name) || meaning.key().startsWith(name + "."))
        .toList();
  }
}
