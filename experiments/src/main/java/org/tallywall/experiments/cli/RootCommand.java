package org.tallywall.experiments.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program without a command: it says which there are. */
@Command(
    name = "tallywall",
    description =
        "Plays American mahjong on your own card in many thousands of seeded games and counts"
            + " what happened.",
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND")
final class RootCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Shows this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Prints the version.")
  private boolean version;

  @Option(
      names = "--debug",
      scope = ScopeType.INHERIT,
      description = "With an error, shows where in the program it arose.")
  private boolean debug;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "name a command: " + String.join(", ", spec.subcommands().keySet()));
  }
}
