package org.tallywall.experiments.gauges.calibration;

/** What was said beside what happened, in ten bins of equal width, and how well it fits. */
public final class Deciles {
  private final Bins bins = new Bins(0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9);
  private final Score score = new Score();

  /** Empty bins. */
  public Deciles() {}

  /**
   * Notes one chance.
   *
   * @param chance what was said, 0 to 1
   * @param came whether it was true
   */
  public void note(double chance, boolean came) {
    bins.note(chance + 1e-12, chance, came);
    score.note(chance, chance, came);
  }

  /** The game is over. */
  public void endGame() {
    bins.endGame();
    score.endGame();
  }

  /** One line a bin, for a look at the console. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    for (Bins.Row row : bins.rows()) {
      text.append(
          String.format(
              java.util.Locale.ROOT,
              "  %3.0f %8d said %6.2f true %6.2f diff %6.2f (%6.2f to %6.2f)%n",
              100 * row.from(),
              row.count(),
              100 * row.said(),
              100 * row.happened(),
              100 * (row.said() - row.happened()),
              100 * (row.said() - row.limits().high()),
              100 * (row.said() - row.limits().low())));
    }
    return text.append(String.format("  log score %.3f%n", 1000 * score.logarithmic().value()))
        .toString();
  }
}
