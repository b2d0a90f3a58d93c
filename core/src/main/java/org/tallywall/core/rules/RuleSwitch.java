package org.tallywall.core.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.text.Shown;

/**
 * One switch of a rules file: its key, its default, and what it may be. Values are words, whole
 * numbers, or true and false.
 *
 * @param key the key in a rules file, as in {@code wall.cold}
 * @param standard the default: a {@link String}, {@link Integer} or {@link Boolean}
 * @param words the words it may be; empty where it is a number or true and false
 * @param least smallest number it may be; 1 and a smaller {@code most} where it is no number
 * @param most largest number it may be
 * @param later words or numbers that are known but not played yet
 */
public record RuleSwitch(
    String key, Object standard, List<String> words, int least, int most, List<Object> later) {
  /**
   * A switch.
   *
   * @param key the key in a rules file
   * @param standard the default
   * @param words the words it may be
   * @param least smallest number
   * @param most largest number
   * @param later values not played yet
   */
  public RuleSwitch {
    words = List.copyOf(words);
    later = List.copyOf(later);
  }

  /**
   * A switch between words; the first is the default.
   *
   * @param key the key
   * @param words the words it may be
   * @return the switch
   */
  static RuleSwitch words(String key, String... words) {
    return new RuleSwitch(key, words[0], Arrays.asList(words), 1, 0, List.of());
  }

  /**
   * A whole number.
   *
   * @param key the key
   * @param standard the default
   * @param least smallest value
   * @param most largest value
   * @return the switch
   */
  static RuleSwitch number(String key, int standard, int least, int most) {
    return new RuleSwitch(key, standard, List.of(), least, most, List.of());
  }

  /**
   * True or false.
   *
   * @param key the key
   * @param standard the default
   * @return the switch
   */
  static RuleSwitch flag(String key, boolean standard) {
    return new RuleSwitch(key, standard, List.of(), 1, 0, List.of());
  }

  /**
   * The same switch that may also be a number.
   *
   * @param from smallest value
   * @param to largest value
   * @return the switch
   */
  RuleSwitch orNumber(int from, int to) {
    return new RuleSwitch(key, standard, words, from, to, later);
  }

  /**
   * The same switch with values that are known but not played yet.
   *
   * @param values the values
   * @return the switch
   */
  RuleSwitch notYet(Object... values) {
    return new RuleSwitch(key, standard, words, least, most, Arrays.asList(values));
  }

  /**
   * Whether a value is known, played or not.
   *
   * @param value a word, number or flag; null is never allowed
   * @return true if the switch may be set to it
   */
  public boolean allows(Object value) {
    if (value instanceof Integer number) {
      return number >= least && number <= most;
    }
    return value instanceof Boolean
        ? standard instanceof Boolean
        : value != null && words.contains(value);
  }

  /**
   * Whether a value is known but not played yet.
   *
   * @param value an allowed value
   * @return true if the engine cannot play it
   */
  public boolean isLater(Object value) {
    return later.contains(value)
        || (later.contains("numbers") && value instanceof Integer && !value.equals(standard));
  }

  /**
   * Why the switch may not be set to a value.
   *
   * @param value what somebody wrote; null for something that is no word, whole number or flag
   * @param written how the message names the value
   * @return what to write instead, or null where the value may stand
   */
  String fault(Object value, String written) {
    if (!allows(value)) {
      return String.format(
          Locale.ROOT, "the switch \"%s\" may be %s; not %s", key, choices(), Shown.word(written));
    }
    return isLater(value)
        ? String.format(
            Locale.ROOT,
            "not yet: \"%s\": %s is known but not played yet; leave it at %s (it may be %s)",
            key,
            value,
            standard,
            choices())
        : null;
  }

  /**
   * The values that it may be set to, in words; those not played yet are left out.
   *
   * @return as in "OFF, NO_CLAIM" or "a whole number from 0 to 12"
   */
  public String choices() {
    List<String> choices = new ArrayList<>(words);
    if (standard instanceof Boolean) {
      choices.add("true");
      choices.add("false");
    }
    later.forEach(value -> choices.remove(String.valueOf(value)));
    if (later.contains("numbers") && standard instanceof Integer) {
      choices.add(String.valueOf(standard));
    } else if (least <= most && !later.contains("numbers")) {
      choices.add(
          least == most ? String.valueOf(least) : "a whole number from " + least + " to " + most);
    }
    return String.join(", ", choices);
  }

  /**
   * The values that are known but not played yet, in words.
   *
   * @return as in "MUSH" or "a whole number from 1 to 6", or empty
   */
  public String laterChoices() {
    List<String> choices = new ArrayList<>();
    for (Object value : later) {
      boolean atTheEdge = Integer.valueOf(least).equals(standard);
      choices.add(
          value.equals("numbers")
              ? "a whole number from " + (atTheEdge ? least + 1 : least) + " to " + most
              : String.valueOf(value));
    }
    return String.join(", ", choices);
  }
}
