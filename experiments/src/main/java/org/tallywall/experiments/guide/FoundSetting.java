package org.tallywall.experiments.guide;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/**
 * A setting that was looked for, listed once however many players have it.
 *
 * @param setting the setting as the first of its players has it
 * @param players who has it, at least one
 */
public record FoundSetting(Setting<?> setting, List<PlayerType> players) {
  /**
   * A setting that was found.
   *
   * @param setting the setting
   * @param players who has it
   */
  public FoundSetting {
    players = List.copyOf(players);
  }

  /**
   * Looks for settings.
   *
   * @param words one word or several with blanks between, large or small letters; all of them must
   *     stand in a setting's name or meaning
   * @param players whose settings are looked through
   * @return every setting found once, in the order of the players
   */
  public static List<FoundSetting> find(String words, List<PlayerType> players) {
    String[] wanted = words.strip().toLowerCase(Locale.ROOT).split("\\s+");
    Map<String, List<PlayerType>> owners = new LinkedHashMap<>();
    Map<String, Setting<?>> settings = new LinkedHashMap<>();
    for (PlayerType player : players) {
      for (Setting<?> setting : player.settings()) {
        if (holds(setting, wanted)) {
          String key = setting.name() + "\n" + setting.meaning();
          settings.putIfAbsent(key, setting);
          owners.computeIfAbsent(key, name -> new ArrayList<>()).add(player);
        }
      }
    }
    return settings.entrySet().stream()
        .map(found -> new FoundSetting(found.getValue(), owners.get(found.getKey())))
        .toList();
  }

  private static boolean holds(Setting<?> setting, String... wanted) {
    String text = (setting.name() + " " + setting.meaning()).toLowerCase(Locale.ROOT);
    for (String word : wanted) {
      if (!text.contains(word)) {
        return false;
      }
    }
    return true;
  }

  /**
   * The usual value, and whose is another.
   *
   * @return as in "true" or "3; bold: 5"
   */
  public String usual() {
    StringBuilder text = new StringBuilder(usual(setting));
    for (PlayerType player : players) {
      for (Setting<?> own : player.settings()) {
        if (own.name().equals(setting.name())
            && !Setting.same(own.standard(), setting.standard())) {
          text.append("; ").append(player.id()).append(": ").append(usual(own));
        }
      }
    }
    return text.toString();
  }

  /**
   * The usual value of a setting, as a study writes it.
   *
   * @param setting the setting
   * @return the value; "none" where it is an empty text
   */
  public static String usual(Setting<?> setting) {
    String usual =
        setting.standard() instanceof BigDecimal number
            ? number.toPlainString()
            : String.valueOf(setting.standard());
    return usual.isEmpty() ? "none" : usual;
  }
}
