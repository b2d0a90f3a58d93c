package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Shown;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in one line what is wrong with the words that were typed. */
final class UsageFault {
  private UsageFault() {}

  static String text(ParameterException wrong) {
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), wrong.getCommandLine());
    } else if (wrong instanceof MissingParameterException missing
        && !missing.getMissing().isEmpty()) {
      return missing(missing);
    }
    String message = wrong.getMessage();
    int end = message.indexOf('\n');
    String line = end < 0 ? message : message.substring(0, end);
    return line.isEmpty() ? line : Character.toLowerCase(line.charAt(0)) + line.substring(1);
  }

  private static String missing(MissingParameterException missing) {
    String names =
        missing.getMissing().stream()
            .map(
                arg ->
                    arg.isOption()
                        ? ((CommandLine.Model.OptionSpec) arg).longestName()
                            + " "
                            + arg.paramLabel()
                        : arg.paramLabel())
            .collect(Collectors.joining(" and "));
    return names + (missing.getMissing().size() == 1 ? " is missing" : " are missing");
  }

  private static String unmatched(String word, CommandLine command) {
    if (word.startsWith("-")) {
      List<String> options = new ArrayList<>();
      command.getCommandSpec().options().stream()
          .filter(option -> !option.hidden())
          .forEach(option -> options.addAll(List.of(option.names())));
      return unknown("option", word, options);
    }
    List<String> names = new ArrayList<>(command.getSubcommands().keySet());
    if (!names.isEmpty()) {
      boolean sums = command.getCommandSpec().userObject() instanceof ChancesCommand;
      return unknown(sums ? "sum" : "command", word, names);
    }
    return "unexpected \"%s\"; put %s in quotes"
        .formatted(Shown.word(word), quoted(command.getCommandSpec().userObject()));
  }

  /** What a command takes as one word, although it has spaces. */
  private static String quoted(Object command) {
    if (command instanceof RackCommand) {
      return "the whole rack";
    }
    return command instanceof ChancesWaitCommand ? "all the tiles" : "names with spaces";
  }

  private static String unknown(String what, String word, List<String> known) {
    return "there is no %s \"%s\"%s".formatted(what, Shown.word(word), Nearest.advice(word, known));
  }
}
