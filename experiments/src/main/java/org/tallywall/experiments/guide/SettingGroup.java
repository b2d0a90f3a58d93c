package org.tallywall.experiments.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.stream.Stream;
import org.tallywall.strategies.setting.Setting;

/**
 * The settings of a player that belong together: those whose names begin with the same word.
 *
 * @param name that word, as in {@code passes}
 * @param settings at least one, in the order of the player
 */
public record SettingGroup(String name, List<Setting<?>> settings) {
  private static final Map<String, String> ABOUT =
      Map.ofEntries(
          Map.entry("aim", "which line to go for"),
          Map.entry("passes", "the Charleston"),
          Map.entry("claims", "when to take a discard"),
          Map.entry("jokers", "when to exchange, keep and throw jokers"),
          Map.entry("discards", "what to throw"),
          Map.entry("defense", "when to stop pushing the hand"),
          Map.entry("read", "what to read from the others"),
          Map.entry("wins", "when to turn a win down"),
          Map.entry("overlooks", "what to miss, and how often"),
          Map.entry("rollout", "how to play choices out"),
          Map.entry(
              "knows",
              "what to know that no seat may know: yardsticks, not ways of playing; results mark them"));

  /**
   * A group.
   *
   * @param name the word that the names begin with
   * @param settings the settings
   */
  public SettingGroup {
    settings = List.copyOf(settings);
  }

  /**
   * The groups of some settings.
   *
   * @param settings settings of one player
   * @return every setting once; groups stand in the order of their first settings
   */
  public static List<SettingGroup> of(List<Setting<?>> settings) {
    Map<String, List<Setting<?>>> groups = new LinkedHashMap<>();
    for (Setting<?> setting : settings) {
      groups.computeIfAbsent(first(setting), name -> new ArrayList<>()).add(setting);
    }
    return groups.entrySet().stream().map(SettingGroup::of).toList();
  }

  private static SettingGroup of(Entry<String, List<Setting<?>>> group) {
    return new SettingGroup(group.getKey(), group.getValue());
  }

  private static String first(Setting<?> setting) {
    return setting.name().split("\\.", 2)[0];
  }

  /**
   * What the group is about.
   *
   * @return a few words; empty for a group of a player that does not come with the project
   */
  public String about() {
    return ABOUT.getOrDefault(name, "");
  }

  /**
   * Words that narrow a list of settings: every beginning of their names that ends before a dot,
   * and the names themselves.
   *
   * @param settings settings of one player
   * @return as in {@code defense}, {@code defense.hold-back}
   */
  public static List<String> prefixes(List<Setting<?>> settings) {
    return settings.stream().flatMap(setting -> beginnings(setting.name())).distinct().toList();
  }

  private static Stream<String> beginnings(String name) {
    List<String> beginnings = new ArrayList<>();
    for (int dot = name.indexOf('.'); dot >= 0; dot = name.indexOf('.', dot + 1)) {
      beginnings.add(name.substring(0, dot));
    }
    beginnings.add(name);
    return beginnings.stream();
  }

  /**
   * The settings whose names are a word or begin with it and a dot.
   *
   * @param settings settings of one player
   * @param prefix the word
   * @return in the order given
   */
  public static List<Setting<?>> below(List<Setting<?>> settings, String prefix) {
    List<Setting<?>> below = new ArrayList<>();
    for (Setting<?> setting : settings) {
      if (setting.name().equals(prefix) || setting.name().startsWith(prefix + ".")) {
        below.add(setting);
      }
    }
    return below;
  }
}
