package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.habit.Setting;
import picocli.CommandLine.Command;
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

  PlayersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Catalog catalog = Catalog.standard();
    if (name == null) {
      catalog.types().forEach(this::print);
    } else {
      print(catalog.type(name).orElseThrow(() -> new WrongInputException(catalog.unknown(name))));
    }
    return Program.DONE;
  }

  private void print(PlayerType type) {
    console.say(type.id());
    wrap("    ", type.description());
    if (type.settings().isEmpty()) {
      console.say("    no settings");
    }
    for (Setting setting : type.settings()) {
      console.say(
          "    %s (%s; usually %s)".formatted(setting.name(), setting.range(), setting.standard()));
      wrap("        ", setting.meaning());
    }
  }

  private void wrap(String indent, String text) {
    Words.wrapped(text, indent, console.width()).forEach(console::say);
  }
}
