package org.tallywall.experiments.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The commands about study files. */
@Command(
    name = "study",
    description = "Writes a new study to fill in, and lists the studies that are ready to run.",
    synopsisSubcommandLabel = "COMMAND")
final class StudyCommand implements Runnable {
  @Spec private CommandSpec spec;

  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(),
        "name what to do: "
            + String.join(", ", spec.subcommands().keySet())
            + "; to play a study: tallywall run STUDY");
  }
}
