package org.tallywall.experiments.attack;

import java.util.Map;

/**
 * What came of an attack.
 *
 * @param code the exit code; none where the command did not end or threw something
 * @param out what went to the standard output
 * @param err what went to the standard error
 * @param thrown what came out of the program, or null
 * @param stuck where the program was when time was up, or empty
 * @param before what was in the folder before, with sizes
 * @param after what was in it afterwards
 */
record Outcome(
    int code,
    Capture out,
    Capture err,
    Throwable thrown,
    String stuck,
    Map<String, String> before,
    Map<String, String> after) {
  static final int NO_CODE = -1;
}
