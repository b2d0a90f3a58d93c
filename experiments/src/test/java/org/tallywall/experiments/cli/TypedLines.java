package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the commands in what people read, block by block. */
final class TypedLines {
  private static final String FENCE = "```";
  private static final String INDENT = "    ";

  /** A command, behind a prompt or variables for it, and before what is said about it. */
  private static final Pattern COMMAND =
      Pattern.compile("(?:\\$ )?((?:[A-Z_]+=\\S+ )*(?:\\./)?tallywall(?: .*)?)");

  private static final Pattern EXAMPLE = Pattern.compile("\\s*(?:Example: )?(tallywall .*)");

  private TypedLines() {}

  /**
   * The commands in the code blocks of a Markdown text.
   *
   * @return a list for each block that has any
   */
  static List<List<String>> ofMarkdown(List<String> lines) {
    List<List<String>> blocks = new ArrayList<>();
    List<String> block = new ArrayList<>();
    boolean fenced = false;
    for (String line : lines) {
      if (line.startsWith(FENCE)) {
        fenced = !fenced;
      }
      if (fenced || line.startsWith(INDENT)) {
        add(COMMAND.matcher(line.strip()), block);
      } else if (!block.isEmpty()) {
        blocks.add(block);
        block = new ArrayList<>();
      }
    }
    if (!block.isEmpty()) {
      blocks.add(block);
    }
    return blocks;
  }

  /** The commands in the last lines of a help text. */
  static List<String> ofFooter(String... lines) {
    List<String> commands = new ArrayList<>();
    for (String line : lines) {
      add(EXAMPLE.matcher(line), commands);
    }
    return commands;
  }

  private static void add(Matcher command, List<String> commands) {
    if (command.matches()) {
      commands.add(command.group(1).split(" {2,}", 2)[0].strip());
    }
  }
}
