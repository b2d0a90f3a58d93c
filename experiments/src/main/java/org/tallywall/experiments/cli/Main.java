package org.tallywall.experiments.cli;

/** Where the program starts. */
public final class Main {

  private Main() {}

  /**
   * Prints the version of the program.
   *
   * @param args what was typed after the name of the program; not used
   */
  public static void main(String[] args) {
    System.out.println("tallywall " + Main.class.getPackage().getImplementationVersion());
  }
}
