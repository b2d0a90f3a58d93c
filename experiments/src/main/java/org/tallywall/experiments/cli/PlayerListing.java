package org.tallywall.experiments.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tallywall.experiments.guide.FoundSetting;
import org.tallywall.experiments.guide.SettingGroup;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.setting.Setting;

/** Prints players and their settings. */
final class PlayerListing {
  private static final String INDENT = "    ";

  private final Console console;

  PlayerListing(Console console) {
    this.console = console;
  }

  /** All players, a line or two each. */
  void overview(List<PlayerType> players) {
    int widest = players.stream().mapToInt(player -> player.id().length()).max().orElse(0);
    for (PlayerType player : players) {
      hanging(player.id() + " ".repeat(widest + 2 - player.id().length()), about(player));
    }
  }

  private static String about(PlayerType player) {
    return (player.seesEverything() ? "SEES ALL TILES: " : "")
        + player.description()
        + player.origin().map(jar -> "; from the jar " + jar.file()).orElse("");
  }

  /** One player with some of its settings, group by group. */
  void details(PlayerType player, List<Setting<?>> settings) {
    console.say(player.id() + (player.seesEverything() ? "   ! SEES ALL TILES" : ""));
    wrap(INDENT, player.description());
    if (player.seesEverything()) {
      wrap(
          INDENT,
          "may sit at a \"table\" or in a \"round-robin\" only; results mark it as one that sees"
              + " all tiles");
    }
    player.origin().ifPresent(jar -> wrap(INDENT, "from the jar " + jar.file()));
    if (player.settings().isEmpty()) {
      console.say(INDENT + "no settings");
    }
    for (SettingGroup group : SettingGroup.of(settings)) {
      console.say("");
      console.say("  " + group.name() + (group.about().isEmpty() ? "" : ": " + group.about()));
      for (Setting<?> setting : group.settings()) {
        print(setting, FoundSetting.usual(setting));
      }
    }
  }

  /** Settings that were looked for. */
  void found(List<FoundSetting> settings) {
    Map<String, List<FoundSetting>> byOwners =
        settings.stream()
            .collect(
                Collectors.groupingBy(
                    PlayerListing::owners, LinkedHashMap::new, Collectors.toList()));
    byOwners.forEach(
        (owners, found) -> {
          wrap("", owners + ":");
          found.forEach(one -> print(one.setting(), one.usual()));
        });
  }

  private static String owners(FoundSetting found) {
    return found.players().stream().map(PlayerType::id).collect(Collectors.joining(", "));
  }

  private void print(Setting<?> setting, String usual) {
    wrap(INDENT, "%s (%s; usually %s)".formatted(setting.name(), setting.range(), usual));
    wrap(INDENT + INDENT, setting.meaning());
  }

  void wrap(String indent, String text) {
    Words.wrapped(text, indent, console.width()).forEach(console::say);
  }

  /** A text that begins behind a first word and goes on below itself. */
  private void hanging(String first, String text) {
    List<String> lines = Words.wrapped(text, " ".repeat(first.length()), console.width());
    console.say(first + lines.get(0).substring(first.length()));
    lines.subList(1, lines.size()).forEach(console::say);
  }
}
