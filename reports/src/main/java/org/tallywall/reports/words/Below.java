package org.tallywall.reports.words;

import java.util.List;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.results.Results;

/** What stands below every chart. */
public final class Below {
  private Below() {}

  /**
   * How much was played, and of what the figures speak.
   *
   * @param results what a results folder holds
   * @return notes for a caption
   */
  public static List<String> chart(Results results) {
    return List.of(
        "%s, %s. Programmed players, one card, one set of rules."
            .formatted(Stops.counted(results), results.manifest().text("card")));
  }

  /**
   * What a chart says of itself where it stands alone.
   *
   * @param results what a results folder holds
   * @return the mark of a run that is not complete, the question, the study and who was compared
   */
  public static Slide slide(Results results) {
    return new Slide(
        Unfinished.mark(results).orElse(""), results.question(), List.of(study(results)));
  }

  private static String study(Results results) {
    String name = "Study: " + results.name() + ".";
    String players = Who.compared(results);
    return players.isEmpty() ? name : name + " " + players;
  }
}
