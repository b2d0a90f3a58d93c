package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Values;

/** The columns of {@code differences.csv}. */
public final class DifferenceColumns {
  /** The file's name without its ending. */
  public static final String FILE = "differences";

  /** The column {@code arm}. */
  public static final Column ARM =
      Column.text("arm", "The way of playing.").headed("way of playing").filled();

  /** The column {@code baseline}. */
  public static final Column BASELINE =
      Column.text("baseline", "The way that it is compared with.").headed("compared with").filled();

  /** The column {@code measure}. */
  public static final Column MEASURE = Column.text("measure", "What is measured.").filled();

  /** The column {@code role}. */
  public static final Column ROLE =
      Column.text(
              "role",
              "\"primary\" answers the question; \"secondary\" was declared before the run; \"exploratory\" was not, and proves nothing.")
          .filled()
          .oneOf("primary", "secondary", "exploratory");

  /** The column {@code unit}. */
  public static final Column UNIT =
      Column.text("unit", "\"share of games\", or \"per game\".")
          .oneOf("share of games", "per game");

  /** The column {@code level}. */
  public static final Column LEVEL =
      Column.decimal("level", "as in unit", "The way's own mean a game.")
          .headed("this way")
          .shownTo(1);

  /** The column {@code baseline-level}. */
  public static final Column BASELINE_LEVEL =
      Column.decimal("baseline-level", "as in unit", "The mean of the way compared with.")
          .headed("the other's")
          .shownTo(1);

  /** The column {@code difference}. */
  public static final Column DIFFERENCE =
      Column.decimalInterval(
              "difference",
              "as in unit",
              "Mean of the differences on the same deals. The limits are empty where too few deals differ to give any: fewer than 10 and fewer than half, of a measure without bounds. A share of games has limits always.")
          .headed("difference on the same deals")
          .shownTo(1);

  /** The column {@code method}. */
  public static final Column METHOD =
      Column.text(
          "method",
          "How the interval of the difference was computed; of a share of games with several seats \"Clopper-Pearson by size\", which is exact, where fewer than 10 deals differ, and fewer than half; with one seat Newcombe's, however few differ, and the exact one only where none does.");

  /** The column {@code p}. */
  public static final Column P =
      Column.decimal(
              "p",
              "chance",
              "Chance of a difference this large by luck alone, where a test was declared.")
          .within(0, Limits.CHANCE);

  /** The column {@code p-holm}. */
  public static final Column P_HOLM =
      Column.decimal(
              "p-holm",
              "chance",
              "The same by Holm, for all declared comparisons of the study, primary and secondary, taken together.")
          .within(0, Limits.CHANCE);

  /** The column {@code correlation}. */
  public static final Column CORRELATION =
      Column.decimal(
              "correlation", "-1 to 1", "How alike the games of the two ways on the same deal are.")
          .within(-Limits.CHANCE, Limits.CHANCE);

  /** The column {@code gain}. */
  public static final Column GAIN =
      Column.decimal(
              "gain",
              "times",
              "How many times as many deals the run would need without playing the same ones both ways.")
          .within(0, Limits.BEYOND);

  /** The column {@code deals}. */
  public static final Column DEALS = Column.integer("deals", "deals", "Deals compared.");

  /** The column {@code discordant}. */
  public static final Column DISCORDANT =
      Column.integer("discordant", "deals", "Deals that came out differently in any seat.")
          .headed("deals that came out differently");

  /** The column {@code more}. */
  public static final Column MORE =
      Column.integer("more", "deals", "Deals in which the way had more, all its seats together.");

  /** The column {@code fewer}. */
  public static final Column FEWER =
      Column.integer(
          "fewer",
          "deals",
          "Deals in which it had fewer; in the rest of \"discordant\" its seats cancel.");

  /** The column {@code most-discordant}. */
  public static final Column MOST_DISCORDANT =
      Column.decimal(
              "most-discordant",
              "share of deals",
              "Where no deal differed and their number was fixed: the exact upper limit of the share of deals that do.")
          .within(0, Limits.CHANCE);

  /** The column {@code detectable}. */
  public static final Column DETECTABLE =
      Column.decimal(
              "detectable",
              "as in unit",
              "The smallest true gap that this many deals would catch in nine runs of ten, of a declared comparison with the allowance for chance findings shared evenly among all declared ones, of any other with all of it; of a run that could stop early, by the range that it ended with. Empty where fewer than 10 deals differ, and fewer than half, and for what a sequential test decides: it was set to a size of its own.")
          .headed("smallest difference this run would catch")
          .within(0, Values.FURTHEST);

  /** The column {@code games-to-notice}. */
  public static final Column GAMES_TO_NOTICE =
      Column.decimal(
              "games-to-notice",
              "games",
              "For the win rate: games each way, on other deals each, that it takes to notice a difference of this size in nine cases of ten (5 %, two-sided).")
          .within(0, Limits.BEYOND);

  private DifferenceColumns() {}

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        ARM,
        BASELINE,
        MEASURE,
        ROLE,
        UNIT,
        LEVEL,
        BASELINE_LEVEL,
        DIFFERENCE,
        METHOD,
        P,
        P_HOLM,
        CORRELATION,
        GAIN,
        DEALS,
        DISCORDANT,
        MORE,
        FEWER,
        MOST_DISCORDANT,
        DETECTABLE,
        GAMES_TO_NOTICE);
  }
}
