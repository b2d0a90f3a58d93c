package org.tallywall.experiments.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** Shows the help of a command, as {@code --help} behind it does. */
@Command(
    name = "help",
    description = "Shows the commands, or the help of one.",
    footer = {"Examples:", "  tallywall help run", "  tallywall help card check"})
final class HelpCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..*", paramLabel = "COMMAND", description = "The command's name.")
  private String[] words = {};

  HelpCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    CommandLine command = spec.root().commandLine();
    for (String word : words) {
      CommandLine next = command.getSubcommands().get(word);
      if (next == null) {
        throw new UnmatchedArgumentException(command, List.of(word));
      }
      command = next;
    }
    command.usage(console.help());
    return Program.DONE;
  }
}
