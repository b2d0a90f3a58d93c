package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.habit.Setting;
import picocli.CommandLine.Command;

/** Lists the players that a study can name. */
@Command(name = "players", description = "Lists the players that a study can name.")
final class PlayersCommand implements Callable<Integer> {
  private final Console console;

  PlayersCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    for (PlayerType type : Catalog.standard().types()) {
      console.say(type.id());
      wrap("    ", type.description());
      if (type.settings().isEmpty()) {
        console.say("    no settings");
      }
      for (Setting setting : type.settings()) {
        console.say(
            "    "
                + setting.name()
                + " ("
                + setting.range()
                + "; usually "
                + setting.standard()
                + ")");
        wrap("        ", setting.meaning());
      }
    }
    return Program.DONE;
  }

  private void wrap(String indent, String text) {
    Words.wrapped(text, indent, console.width()).forEach(console::say);
  }
}
