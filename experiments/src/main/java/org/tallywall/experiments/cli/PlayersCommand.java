package org.tallywall.experiments.cli;

import java.math.BigDecimal;
import java.util.concurrent.Callable;
import org.tallywall.experiments.words.Words;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.jar.JarTrust;
import org.tallywall.strategies.setting.Setting;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the players that a study can name. */
@Command(
    name = "players",
    description = "Lists the players that a study can name, with their settings.")
final class PlayersCommand implements Callable<Integer> {
  private final Console console;

  @Parameters(
      arity = "0..1",
      paramLabel = "NAME",
      description = "One player only; all of them unless given.")
  private String name;

  @Mixin private Roster roster;

  PlayersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    if (name == null) {
      roster.catalog(JarTrust.ALL).types().forEach(this::print);
    } else {
      print(roster.catalog(JarTrust.ALL).find(name));
    }
    return Program.DONE;
  }

  private void print(PlayerType type) {
    console.say(type.id() + (type.seesEverything() ? "   ! SEES ALL TILES" : ""));
    wrap("    ", type.description());
    if (type.seesEverything()) {
      wrap(
          "    ",
          "may sit at a \"table\" or in a \"round-robin\" only; results mark it as one that sees"
              + " all tiles");
    }
    type.origin().ifPresent(jar -> wrap("    ", "from the jar " + jar.file()));
    if (type.settings().isEmpty()) {
      console.say("    no settings");
    }
    for (Setting<?> setting : type.settings()) {
      console.say(
          "    %s (%s; usually %s)".formatted(setting.name(), setting.range(), usual(setting)));
      wrap("        ", setting.meaning());
    }
  }

  private static String usual(Setting<?> setting) {
    return setting.standard() instanceof BigDecimal number
        ? number.toPlainString()
        : String.valueOf(setting.standard());
  }

  private void wrap(String indent, String text) {
    Words.wrapped(text, indent, console.width()).forEach(console::say);
  }
}
