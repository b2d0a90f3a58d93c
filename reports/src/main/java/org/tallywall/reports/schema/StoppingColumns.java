package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Values;

/** The columns of {@code stopping.csv}. */
public final class StoppingColumns {
  /** The file's name without its ending. */
  public static final String FILE = "stopping";

  /** The column {@code arm}. */
  public static final Column ARM = Column.text("arm", "The way of playing.").filled();

  /** The column {@code baseline}. */
  public static final Column BASELINE =
      Column.text("baseline", "The way that it is compared with.").filled();

  /** The column {@code measure}. */
  public static final Column MEASURE =
      Column.text("measure", "What the rule looks at: the primary measure.").filled();

  /** The column {@code rule}. */
  public static final Column RULE =
      Column.text(
              "rule",
              "\"always-valid\": a range that holds at every look; \"sprt\": Wald's sequential test.")
          .filled()
          .oneOf("always-valid", "sprt");

  /** The column {@code goal}. */
  public static final Column GOAL =
      Column.text(
              "goal",
              "\"half-width\": a range that reaches no further to either side than \"size\"; \"clear\": a range that leaves out 0; \"verdict\": the test has decided.")
          .filled()
          .oneOf("half-width", "clear", "verdict");

  /** The column {@code unit}. */
  public static final Column UNIT =
      Column.text("unit", "\"share of games\", or \"per game\".")
          .oneOf("share of games", "per game");

  /** The column {@code size}. */
  public static final Column SIZE =
      Column.decimal(
              "size", "as in unit", "The half-width asked for, or the difference worth finding.")
          .within(0, Values.FURTHEST);

  /** The column {@code false-alarm}. */
  public static final Column FALSE_ALARM =
      Column.decimal(
              "false-alarm",
              "chance",
              "Chance, at most, that the test finds more or fewer where the two are equal.")
          .within(0, Limits.CHANCE);

  /** The column {@code miss}. */
  public static final Column MISS =
      Column.decimal(
              "miss",
              "chance",
              "Chance, at most, that it says \"none of that size\" where there is one.")
          .within(0, Limits.CHANCE);

  /** The column {@code at-most}. */
  public static final Column AT_MOST =
      Column.integer("at-most", "deals", "Deals after which it stopped at the latest.");

  /** The column {@code every}. */
  public static final Column EVERY =
      Column.integer("every", "deals", "Deals from one look to the next.");

  /** The column {@code looks}. */
  public static final Column LOOKS = Column.integer("looks", "looks", "How often it looked.");

  /** The column {@code pilot}. */
  public static final Column PILOT =
      Column.integer(
          "pilot", "deals", "First deals, which only told what to expect and are left out.");

  /** The column {@code first-deal}. */
  public static final Column FIRST_DEAL =
      Column.integer("first-deal", "deal", "The first deal that counts; the seed's first is 0.");

  /** The column {@code last-deal}. */
  public static final Column LAST_DEAL =
      Column.integer("last-deal", "deal", "The last deal that counts.");

  /** The column {@code reached}. */
  public static final Column REACHED =
      Column.text("reached", "Whether the run came to its goal, for all comparisons.")
          .filled()
          .oneOf("yes", "no");

  /** The column {@code verdict}. */
  public static final Column VERDICT =
      Column.text(
              "verdict",
              "What the test says of the way: \"more\", \"fewer\", \"none of that size\" or \"undecided\"; empty by the other rule.")
          .oneOf("more", "fewer", "none of that size", "undecided");

  private StoppingColumns() {}

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
        RULE,
        GOAL,
        UNIT,
        SIZE,
        FALSE_ALARM,
        MISS,
        AT_MOST,
        EVERY,
        LOOKS,
        PILOT,
        FIRST_DEAL,
        LAST_DEAL,
        REACHED,
        VERDICT);
  }
}
