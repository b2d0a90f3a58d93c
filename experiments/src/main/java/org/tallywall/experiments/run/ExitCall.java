package org.tallywall.experiments.run;

/** Tells from where a thread is that it has told the whole program to end. */
public final class ExitCall {
  private ExitCall() {}

  /**
   * Whether a thread waits for the end of the program that it asked for. A signal ends it in
   * another way.
   *
   * @param frames where the thread is
   * @return true if so
   */
  public static boolean isIn(StackTraceElement[] frames) {
    for (StackTraceElement frame : frames) {
      if (frame.getClassName().equals("java.lang.Runtime")
          && frame.getMethodName().equals("exit")) {
        return true;
      }
    }
    return false;
  }
}
