package org.tallywall.experiments.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /**
   * Runs one command and ends the process with its exit code: 0 done, 1 ran but failed, 2 wrong
   * input or usage, 130 stopped by Ctrl-C.
   *
   * @param args what was typed after the name of the program
   */
  public static void main(String[] args) {
    Console console =
        Console.ofProcess(
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            System.getenv());
    System.exit(new Program(console).run(args));
  }
}
