package org.tallywall.experiments.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.tallywall.experiments.words.Words;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Exact sums about tiles: without a word it lists them. */
@Command(
    name = "chances",
    description = {
      "Works out exact chances without playing: what comes, what is dealt, how many draws are left.",
      "Without SUM: lists the sums."
    },
    synopsisSubcommandLabel = "[SUM]",
    footer = {
      "Where N stands for tiles or draws, several numbers make a table: 20..80, 20..80/4 (every"
          + " fourth), or 20,40,60.",
      "Examples:",
      "  tallywall chances",
      "  tallywall chances jokers",
      "  tallywall chances pairs --html pairs.html",
      "  tallywall chances wait \"5b 8b\" --seen \"55b\" --wall 40"
    })
final class ChancesCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  ChancesCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.say("What can be worked out exactly, without playing:");
    for (Map.Entry<String, CommandLine> sum : spec.subcommands().entrySet()) {
      CommandSpec one = sum.getValue().getCommandSpec();
      console.say("  " + sum.getKey());
      Words.wrapped(one.usageMessage().description()[0], "      ", console.width())
          .forEach(console::say);
    }
    console.say("");
    console.say(
        "tallywall chances jokers answers the first; tallywall help chances wait explains one.");
    return Program.DONE;
  }
}
