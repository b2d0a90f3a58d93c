package org.tallywall.experiments.guide;

import java.util.Arrays;
import java.util.List;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.html.Resource;

/** A position sheet to fill in, commented line by line and ready to be asked as it stands. */
public enum SheetToFill {
  /** Which tiles to pass. */
  PASS("pass", "pass right-1", "pass 3d N W", false),
  /** Whether to stop the passes. */
  STOP("stop", "stop", "stop", false),
  /** How many tiles to offer across. */
  COURTESY_ASK("courtesy-ask", "courtesy ask", "courtesy 2", false),
  /** Which tiles to give across. */
  COURTESY_GIVE("courtesy-give", "courtesy give 2", "pass N W", false),
  /** What to do with 14 tiles. */
  TURN("turn", "turn drew G", "discard G", true),
  /** What to do with a discard. */
  OFFER("offer", "offer 5b from 0", "nothing", true);

  private static final String RACK = "113b 558c 3468d N W F";
  private static final String DRAWN = " G";

  private final String kind;
  private final String moment;
  private final String answer;
  private final boolean inPlay;

  SheetToFill(String kind, String moment, String answer, boolean inPlay) {
    this.kind = kind;
    this.moment = moment;
    this.answer = answer;
    this.inPlay = inPlay;
  }

  /**
   * The words for all that there are.
   *
   * @return as in {@code turn}
   */
  public static List<String> kinds() {
    return Arrays.stream(values()).map(one -> one.kind).toList();
  }

  /**
   * The sheet for a word.
   *
   * @param kind one of {@link #kinds()}
   * @return the sheet
   * @throws WrongInputException if there is none, with the words that there are
   */
  public static SheetToFill of(String kind) {
    int at = kinds().indexOf(kind);
    if (at < 0) {
      throw new WrongInputException(
          "there is no question \"%s\"%s (questions: %s)"
              .formatted(
                  Shown.word(kind), Nearest.hint(kind, kinds()), String.join(", ", kinds())));
    }
    return values()[at];
  }

  /**
   * The sheet.
   *
   * @return its lines
   */
  public String text() {
    String table = inPlay ? part("table") : "";
    return part("sheet")
        .replace("@MOMENT-SAYS@\n", part("moment-" + kind))
        .replace("@TABLE@\n", table)
        .replace("@HEARD@\n", inPlay ? part("heard") : "")
        .replace("@HOLDS@", this == TURN ? "14" : "13")
        .replace("@RACK@", this == TURN ? RACK + DRAWN : RACK)
        .replace("@MOMENT@", moment)
        .replace("@ANSWER@", answer);
  }

  private static String part(String name) {
    return Resource.text(SheetToFill.class, "position-" + name + ".txt");
  }
}
