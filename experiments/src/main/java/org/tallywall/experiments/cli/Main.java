package org.tallywall.experiments.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /**
   * Runs one command and ends the process with its exit code: 0 done, 1 ran but failed, 2 wrong
   * input or usage, 130 stopped by Ctrl-C or asked to terminate. What players of a user's own print
   * goes to the standard error, so that it is never among results.
   *
   * @param args what was typed after the name of the program
   */
  public static void main(String[] args) {
    Console console =
        Console.ofProcess(
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            System.getenv(),
            CalledAs.of(System.getProperty(CalledAs.PROPERTY)));
    System.setOut(new PrintStream(new FileOutputStream(FileDescriptor.err), true));
    Signals.listen(console.interrupts()::stop);
    EarlyEnd end = EarlyEnd.watch(console.interrupts(), console);
    int code = new Program(console).run(args);
    end.done(code);
    System.exit(code);
  }
}
