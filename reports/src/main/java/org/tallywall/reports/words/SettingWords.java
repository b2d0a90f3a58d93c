package org.tallywall.reports.words;

import java.util.Optional;
import org.tallywall.reports.results.Results;

/** The setting that a study tries at several values, in words. */
public final class SettingWords {
  private SettingWords() {}

  /**
   * The setting's full name.
   *
   * @param results what a results folder holds
   * @return parts separated by dots
   */
  public static String setting(Results results) {
    Object setting = results.study().object("sweep").get("setting");
    return setting instanceof String text ? text : "setting";
  }

  /**
   * What the setting does, in short.
   *
   * @param results what a results folder holds
   * @return words that follow "a player that"; empty for a folder that does not hold them
   */
  public static Optional<String> heading(Results results) {
    return WayWords.heading(results);
  }

  /**
   * The last words of a setting's name, where a folder of an earlier build says no more.
   *
   * @param setting its full name
   * @return such as "away at least"
   */
  public static String words(String setting) {
    return setting.substring(setting.lastIndexOf('.') + 1).replace('-', ' ');
  }

  /**
   * What a player does that has the setting at a value.
   *
   * @param results what a results folder holds
   * @param value the value
   * @return such as "holds back from 3 tiles away"
   */
  public static String label(Results results, String value) {
    return WayWords.label(results, value).orElse(words(setting(results)) + " " + value);
  }
}
