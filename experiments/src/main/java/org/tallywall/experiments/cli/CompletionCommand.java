package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the script with which a shell completes commands and options. */
@Command(
    name = "completion",
    description =
        "Prints a script that lets bash or zsh complete commands and options with the Tab key.",
    footer = {
      "For this terminal:",
      "  eval \"$(tallywall completion)\"",
      "For every new one, put that line into ~/.bashrc or ~/.zshrc, with the whole path of tallywall."
    })
final class CompletionCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  CompletionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    console.out().print(AutoComplete.bash(console.called().name(), spec.root().commandLine()));
    return Program.DONE;
  }
}
