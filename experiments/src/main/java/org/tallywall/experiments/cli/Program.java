package org.tallywall.experiments.cli;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.NotationException;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.StoppedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.results.WrongResultsException;
import org.tallywall.strategies.catalog.WrongPlayerException;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParseResult;

/** Runs the command that was typed and turns every error into one message and an exit code. */
final class Program {
  static final int DONE = 0;
  static final int FAILED = 1;
  static final int WRONG_INPUT = 2;
  static final int STOPPED = 130;

  private static final int USAGE_WIDTH = 100;

  private final Console console;
  private final CommandLine commands;

  Program(Console console) {
    this.console = console;
    this.commands = Commands.all(console);
    Values.registerAt(commands);
    commands.setCommandName(console.called().words());
    commands.setOut(console.help());
    commands.setErr(console.err());
    commands.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    commands.setUsageHelpWidth(USAGE_WIDTH);
    commands.setParameterExceptionHandler((wrong, args) -> wrongUsage(wrong));
    commands.setExecutionExceptionHandler(this::failed);
  }

  /**
   * Runs a command.
   *
   * @param args the words typed
   * @return the exit code
   */
  int run(String... args) {
    boolean debug = Arrays.asList(args).contains("--debug");
    int code;
    try {
      code = commands.execute(args);
    } catch (OutOfMemoryError tooLittle) {
      code =
          report(
              tooLittle,
              "not enough memory; give more, as in TALLYWALL_JAVA_OPTS=-Xmx1g",
              FAILED,
              debug);
    } catch (StackOverflowError tooDeep) {
      code = report(tooDeep, unexpected(), FAILED, debug);
    }
    try {
      console.finish();
    } catch (FailedException unwritten) {
      code = report(unwritten, said(unwritten), FAILED, debug);
    }
    return code;
  }

  private int wrongUsage(CommandLine.ParameterException wrong) {
    CommandLine command = wrong.getCommandLine();
    console.complain("tallywall: " + UsageFault.text(wrong));
    console.complain("See: " + command.getCommandSpec().qualifiedName() + " --help");
    return WRONG_INPUT;
  }

  private int failed(Exception error, CommandLine command, ParseResult parsed) {
    boolean debug = parsed.originalArgs().contains("--debug");
    if (error instanceof FaultyFileException || error instanceof NotationException) {
      return report(error, error.getMessage(), WRONG_INPUT, debug);
    } else if (error instanceof WrongInputException
        || error instanceof WrongResultsException
        || error instanceof WrongPlayerException) {
      return report(error, said(error), WRONG_INPUT, debug);
    } else if (error instanceof StoppedException) {
      return report(error, said(error), STOPPED, debug);
    } else if (error instanceof FailedException) {
      return report(error, said(error), FAILED, debug);
    }
    return report(error, unexpected(), FAILED, debug);
  }

  /** A sentence of ours is one line, whatever a name in it holds. */
  private static String said(Exception error) {
    return "tallywall: " + Shown.text(String.valueOf(error.getMessage()));
  }

  private static String unexpected() {
    return "tallywall: internal error; please report it together with the output of the same"
        + " command plus --debug";
  }

  private int report(Throwable error, String message, int code, boolean debug) {
    console.complain(message);
    if (debug) {
      error.printStackTrace(console.err());
      console.err().flush();
    }
    return code;
  }

  /** The names of all commands, for tests of the help. */
  List<String> names() {
    return List.copyOf(commands.getSubcommands().keySet());
  }
}
