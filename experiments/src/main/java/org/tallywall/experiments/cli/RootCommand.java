package org.tallywall.experiments.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program without a command: it says what to do first. */
@Command(
    name = "tallywall",
    description =
        "Plays American mahjong on your own card, many thousands of games, and counts what"
            + " happened.",
    versionProvider = Version.class,
    footer = "tallywall help COMMAND shows the help of a command.",
    synopsisSubcommandLabel = "COMMAND")
final class RootCommand implements Callable<Integer> {
  private final Console console;

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
      description = "With an error, shows where in the program it happened.")
  private boolean debug;

  RootCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Welcome.print(console);
    return Program.DONE;
  }
}
