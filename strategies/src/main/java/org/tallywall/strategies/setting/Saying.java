package org.tallywall.strategies.setting;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a setting does, as words that follow "a player that". A saying says "this many" or "this
 * much" where its number belongs, explains what its number stands for once ("; 9 never does"), and
 * names each of several words behind what it means, as in {@code "redeems a joker: as soon as it
 * can (at-once), not at all (never)"}. Where it names a part of the card it says "this family" or
 * "this line".
 */
public final class Saying {
  private static final Pattern PROVERB = Pattern.compile(" \\(\".*\\)$");
  private static final Pattern NUMBER =
      Pattern.compile("this many( more of\\b)?( \\w+)?|this much");
  private static final Pattern NAME = Pattern.compile("this (family|line)");
  private static final Pattern SPECIAL = Pattern.compile("; (-?\\d+) [^;]*");

  private final String words;
  private final boolean names;

  /** A saying; whether it is of a setting that names a part of the card. */
  Saying(String meaning, boolean names) {
    this.names = names;
    this.words = PROVERB.matcher(meaning).replaceFirst("");
  }

  /**
   * The words, whatever the value.
   *
   * @return without the proverb
   */
  public String words() {
    return words;
  }

  /**
   * The first words, which fit where there is little room.
   *
   * @return up to the first explanation
   */
  public String inShort() {
    return brief(words);
  }

  /**
   * What a value makes a player do.
   *
   * @param written the value as a study writes it
   * @return words that follow "a player that"
   */
  public String at(Object written) {
    if (written instanceof Boolean on) {
      return on ? words : "does not do this (" + words + ")";
    }
    return written instanceof BigDecimal number
        ? at(number)
        : naming(words, String.valueOf(written)).orElseGet(() -> choice(String.valueOf(written)));
  }

  /**
   * The first words of what a value makes a player do.
   *
   * @param written the value as a study writes it
   * @return up to the first explanation
   */
  public String inShort(Object written) {
    if (written instanceof Boolean on) {
      return on ? brief(words) : "not: " + brief(words);
    }
    return naming(brief(words), String.valueOf(written)).orElseGet(() -> brief(at(written)));
  }

  /** With the name in its place, where one is named. */
  private Optional<String> naming(String text, String name) {
    String named = name.isEmpty() ? brief(text) : text;
    Matcher place = NAME.matcher(named);
    if (!names || !place.find()) {
      return Optional.empty();
    }
    String part = place.group(1);
    String said = name.isEmpty() ? "no " + part : "the " + part + " “" + name + "”";
    return Optional.of(named.substring(0, place.start()) + said + named.substring(place.end()));
  }

  private static String brief(String text) {
    int end = text.indexOf("; ");
    String clause = end < 0 ? text : text.substring(0, end);
    int colon = clause.indexOf(": ");
    return colon < 0 ? clause : clause.substring(0, colon);
  }

  /** With the number; what another number stands for is left out. */
  private String at(BigDecimal number) {
    String value = Setting.plain(number).toPlainString();
    Matcher special = SPECIAL.matcher(words);
    String kept = special.replaceAll(other -> other.group(1).equals(value) ? "$0" : "");
    Matcher place = NUMBER.matcher(kept);
    if (!place.find()) {
      return kept + ": " + value;
    }
    String rest = kept.substring(place.end());
    String noun = place.group(2) == null ? "" : place.group(2);
    boolean one = value.equals("1") && place.group(1) == null && !rest.startsWith(" as ");
    String said = value + (place.group(1) == null ? "" : place.group(1));
    return kept.substring(0, place.start()) + said + (one ? singular(noun) : noun) + rest;
  }

  private static String singular(String noun) {
    if (noun.endsWith("ies")) {
      return noun.substring(0, noun.length() - 3) + "y";
    }
    return noun.endsWith("s") ? noun.substring(0, noun.length() - 1) : noun;
  }

  /** The meaning that stands before the word in brackets. */
  private String choice(String word) {
    int colon = words.indexOf(": ");
    int at = words.indexOf(" (" + word + ")");
    if (colon < 0 || at < colon) {
      return words + ": " + word;
    }
    String before = words.substring(colon + 2, at);
    int last = before.lastIndexOf("), ");
    return words.substring(0, colon) + " " + before.substring(last < 0 ? 0 : last + 3);
  }
}
