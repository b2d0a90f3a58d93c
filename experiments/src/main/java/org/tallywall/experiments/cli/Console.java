package org.tallywall.experiments.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.words.Words;

/**
 * Where the program writes, results to standard output and everything else to standard error, and
 * from where it reads what is typed or sent to it.
 */
final class Console {
  private static final int USUAL_WIDTH = 100;
  private static final int LONGEST_MESSAGE = 10_000;
  private static final int LEAST_WIDTH = 60;
  private static final int MOST_WIDTH = 160;

  private final PlainWriter results;
  private final PlainWriter messages;
  private final PrintWriter out;
  private final PrintWriter err;
  private final int width;
  private final boolean terminal;
  private final boolean progress;
  private final Interrupts interrupts;
  private final InputStream in;
  private final CalledAs called;

  /**
   * A console.
   *
   * @param out takes results
   * @param err takes messages and progress
   * @param width letters in a line
   * @param terminal whether a person watches, so that a line may be written over
   */
  Console(OutputStream out, OutputStream err, int width, boolean terminal) {
    this(
        out,
        err,
        width,
        terminal,
        true,
        new Interrupts(() -> {}),
        InputStream.nullInputStream(),
        CalledAs.of(null));
  }

  private Console(
      OutputStream out,
      OutputStream err,
      int width,
      boolean terminal,
      boolean progress,
      Interrupts interrupts,
      InputStream in,
      CalledAs called) {
    this.called = called;
    this.interrupts = interrupts;
    this.in = in;
    this.results = new PlainWriter(out);
    this.out = new PrintWriter(results);
    this.messages = new PlainWriter(err);
    this.err = new PrintWriter(messages);
    this.width = width;
    this.terminal = terminal;
    this.progress = progress;
  }

  /**
   * A console on which nothing depends on how long a run takes: it says only what is to be said.
   */
  static Console withoutProgress(OutputStream out, OutputStream err, int width) {
    return withoutProgress(InputStream.nullInputStream(), out, err, width);
  }

  /** Such a console to which something is sent. */
  static Console withoutProgress(InputStream in, OutputStream out, OutputStream err, int width) {
    return withoutProgress(in, out, err, width, CalledAs.of(null));
  }

  /** Such a console of a program that was called in some way. */
  static Console withoutProgress(
      InputStream in, OutputStream out, OutputStream err, int width, CalledAs called) {
    return new Console(out, err, width, false, false, new Interrupts(() -> {}), in, called);
  }

  /** The console of this process. */
  static Console ofProcess(
      OutputStream out, OutputStream err, Map<String, String> environment, CalledAs called) {
    return new Console(
        out,
        err,
        width(environment.get("COLUMNS")),
        isTerminal(),
        true,
        new Interrupts(() -> Runtime.getRuntime().halt(Program.STOPPED)),
        System.in,
        called);
  }

  private static int width(String columns) {
    if (columns == null || !columns.matches("[0-9]{1,4}")) {
      return USUAL_WIDTH;
    }
    return Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, Integer.parseInt(columns)));
  }

  /** From Java 22 on there may be a console object without a terminal; it can be asked. */
  private static boolean isTerminal() {
    java.io.Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (Boolean) java.io.Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderJava) {
      return true;
    }
  }

  PrintWriter out() {
    return out;
  }

  PrintWriter err() {
    return err;
  }

  /** Standard input. */
  InputStream in() {
    return in;
  }

  int width() {
    return width;
  }

  boolean terminal() {
    return terminal;
  }

  /** Whether a run says now and then how far it is. */
  boolean progress() {
    return progress;
  }

  /** What happens when the user wants the program to stop. */
  Interrupts interrupts() {
    return interrupts;
  }

  /** How the program was called. */
  CalledAs called() {
    return called;
  }

  /** Takes the text of a help; its commands are shown as they are to be typed. */
  PrintWriter help() {
    return new PrintWriter(out) {
      @Override
      public void write(String text) {
        super.write(called.in(text));
      }
    };
  }

  /** Prints a line for a reader; a command in it is shown as it is to be typed. */
  void say(String line) {
    out.print(called.in(line));
    out.print('\n');
  }

  /** Prints a paragraph that may be indented; further lines stand two letters further in. */
  void sayWrapped(String text) {
    String plain = text.stripLeading();
    String indent = " ".repeat(text.length() - plain.length());
    List<String> lines = Words.wrapped(plain, indent, width - 4);
    say(lines.get(0));
    lines.subList(1, lines.size()).forEach(line -> say("  " + line));
  }

  /** Begins the line of a terminal anew and writes over it. */
  void overwrite(String line) {
    messages.raw("\r");
    err.print(line);
    err.flush();
  }

  /** Writes lines on a terminal over those written last (ECMA-48: CUU, then ED). */
  void redraw(int before, List<String> lines) {
    out.flush();
    if (before > 0) {
      messages.raw("\u001b[" + before + "A\u001b[J");
    }
    lines.forEach(line -> err.print(line + "\n"));
    err.flush();
  }

  /** A message may repeat names of any length; nobody reads more of them than this. */
  private static String brief(String line) {
    return line.length() <= LONGEST_MESSAGE
        ? line
        : line.substring(0, LONGEST_MESSAGE / 2)
            + " … "
            + line.substring(line.length() - LONGEST_MESSAGE / 2);
  }

  /** Prints a message; a command in it is shown as it is to be typed. */
  void complain(String line) {
    out.flush();
    err.print(called.in(line).lines().map(Console::brief).collect(Collectors.joining("\n")));
    err.print('\n');
    err.flush();
  }

  /**
   * Writes what is still held back.
   *
   * @throws FailedException if results could not be written, unless their reader had enough
   */
  void finish() {
    out.flush();
    err.flush();
    IOException trouble = results.trouble();
    if (trouble != null && !String.valueOf(trouble.getMessage()).contains("Broken pipe")) {
      throw new FailedException("standard output could not be written; is the disk full?", trouble);
    }
  }
}
