package org.tallywall.experiments.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The commands about card files. */
@Command(
    name = "card",
    description =
        "Checks a card, reads it back, lists its hands, compares two copies, or invents a card.",
    synopsisSubcommandLabel = "COMMAND")
final class CardCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(),
        "name what to do with the card: " + String.join(", ", spec.subcommands().keySet()));
  }
}
