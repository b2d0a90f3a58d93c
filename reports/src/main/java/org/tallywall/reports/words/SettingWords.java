package org.tallywall.reports.words;

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
   * The last words of a setting's name.
   *
   * @param setting its full name
   * @return such as "away at least"
   */
  public static String words(String setting) {
    return setting.substring(setting.lastIndexOf('.') + 1).replace('-', ' ');
  }

  /**
   * A value of the setting with the last words of its name.
   *
   * @param results what a results folder holds
   * @param value the value
   * @return such as "away at least 3"
   */
  public static String label(Results results, String value) {
    return words(setting(results)) + " " + value;
  }
}
