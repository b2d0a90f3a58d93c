package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.guide.FoundSetting;
import org.tallywall.experiments.guide.SettingGroup;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.jar.JarTrust;
import org.tallywall.strategies.setting.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists the players that a study can name, and their settings. */
@Command(
    name = "players",
    description = "Lists the players that a study can name, and what you can set about them.",
    footer = {
      "Examples:",
      "  tallywall players                     all players, a line or two each",
      "  tallywall players watchful            one player with its settings",
      "  tallywall players watchful passes     only its settings for the Charleston",
      "  tallywall players --find pair         settings that have to do with pairs"
    })
final class PlayersCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      completionCandidates = Candidates.OfPlayers.class,
      description = "One player, with its settings.")
  private String name;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "GROUP",
      description = "Only these settings: aim, passes, claims, defense.hold-back …")
  private String group;

  @Option(
      names = "--find",
      paramLabel = "WORD",
      description = "Looks for settings that have this word in their name or meaning.")
  private String wanted;

  @Mixin private Roster roster;

  PlayersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Catalog catalog = roster.catalog(JarTrust.ALL);
    PlayerListing listing = new PlayerListing(console);
    if (wanted != null) {
      find(listing, name == null ? catalog.types() : List.of(player(catalog)));
    } else if (name != null) {
      PlayerType player = player(catalog);
      listing.details(player, group == null ? player.settings() : below(player));
    } else {
      listing.overview(catalog.types());
      console.say("");
      console.say("tallywall players NAME shows a player's settings,");
      console.say("tallywall players --find WORD looks through the settings of all.");
    }
    return Program.DONE;
  }

  private void find(PlayerListing listing, List<PlayerType> players) {
    if (group != null) {
      throw new WrongInputException("leave the group out, or --find; not both");
    } else if (wanted.isBlank()) {
      throw new WrongInputException("--find needs a word, as in --find pair");
    }
    List<FoundSetting> found = FoundSetting.find(wanted, players);
    if (found.isEmpty()) {
      throw new WrongInputException(
          "no setting has %s in its name or meaning; try a shorter word"
              .formatted(Words.quoted(wanted)));
    }
    listing.found(found);
  }

  /** The player named; a word that is rather a setting is answered with the way to look it up. */
  private PlayerType player(Catalog catalog) {
    List<String> ids = catalog.types().stream().map(PlayerType::id).toList();
    if (name.matches("[A-Za-z0-9.-]+") && !ids.contains(name)) {
      if (!FoundSetting.find(name, catalog.types()).isEmpty()) {
        throw new WrongInputException(
            "there is no player %s, but there are settings for it; try: tallywall players --find %s"
                .formatted(Words.quoted(name), name));
      }
      List<String> known = new ArrayList<>(ids);
      for (PlayerType type : catalog.types()) {
        for (Setting<?> setting : type.settings()) {
          known.add(setting.name());
          known.add(setting.name().substring(setting.name().lastIndexOf('.') + 1));
        }
      }
      Optional<String> nearest = Nearest.of(name, known);
      if (nearest.isPresent() && !ids.contains(nearest.get())) {
        throw new WrongInputException(
            "there is no player %s; did you mean the setting %s? Try: tallywall players --find %s"
                .formatted(Words.quoted(name), Words.quoted(nearest.get()), nearest.get()));
      }
    }
    return catalog.find(name);
  }

  private List<Setting<?>> below(PlayerType player) {
    List<Setting<?>> below = SettingGroup.below(player.settings(), group);
    if (below.isEmpty()) {
      List<String> known = SettingGroup.prefixes(player.settings());
      throw new WrongInputException(
          known.isEmpty()
              ? player.id() + " has no settings"
              : "%s has no settings under %s%s (groups: %s)"
                  .formatted(
                      player.id(),
                      Words.quoted(group),
                      Nearest.hint(group, known),
                      String.join(
                          ", ",
                          SettingGroup.of(player.settings()).stream()
                              .map(SettingGroup::name)
                              .toList())));
    }
    return below;
  }
}
