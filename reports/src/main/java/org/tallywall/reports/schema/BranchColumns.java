package org.tallywall.reports.schema;

import java.util.List;
import org.tallywall.reports.table.Column;

/** The columns of {@code branch.csv}. */
public final class BranchColumns {
  /** The file's name without its ending. */
  public static final String FILE = "branch";

  /** With fewer deals than this nothing is said of a situation. */
  public static final int FEW = 30;

  /** The column {@code exposures-on-one-rack}. */
  public static final Column EXPOSURES_ON_ONE_RACK =
      Column.integer(
              "exposures-on-one-rack",
              "exposures",
              "Most exposures on one rack of the other players.")
          .headed("exposures on one rack")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code away}. */
  public static final Column AWAY =
      Column.integer(
              "away",
              "tiles",
              "Tiles away of the studied player's rack; lines that can no longer be made are included.")
          .headed("tiles away")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code wall}. */
  public static final Column WALL =
      Column.integer(
              "wall",
              "tiles",
              "Most tiles left in the wall; the situation reaches down to the next smaller one, the last to 0.")
          .headed("wall, at most")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code pass}. */
  public static final Column PASS =
      Column.integer(
              "pass",
              "number",
              "Which pass: 1 first right, 2 first across, 3 first left, 4 second left, 5 second across, 6 last right.")
          .headed("pass (1 first right to 6 last right)")
          .filled()
          .within(1, 6);

  /** The column {@code pairs}. */
  public static final Column PAIRS =
      Column.integer(
              "pairs",
              "kinds",
              "Kinds of tile of which the studied player's rack holds two or more; jokers do not count.")
          .headed("pairs on the rack")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code jokers}. */
  public static final Column JOKERS =
      Column.integer("jokers", "tiles", "Jokers on the studied player's rack.")
          .headed("jokers on the rack")
          .filled()
          .within(0, Limits.TILES);

  /** The column {@code option}. */
  public static final Column OPTION =
      Column.text(
              "option",
              "What is done at the decision; \"claim\" is the claim that brings the hand nearest, with the fewest jokers (where no claim brings it nearer, there is no decision).")
          .filled();

  /** The column {@code compared-with}. */
  public static final Column COMPARED_WITH =
      Column.text("compared-with", "The other option, on the same tiles.")
          .headed("compared with")
          .filled();

  /** The column {@code seat-games}. */
  public static final Column SEAT_GAMES =
      Column.integer("seat-games", "games", "Games of the studied player, whatever happened.");

  /** The column {@code games}. */
  public static final Column GAMES =
      Column.integer(
          "games",
          "games",
          "Games counted here: each once, at its first decision that fits any situation of the study; where both options do the same the difference is 0 and counts as such.");

  /** The column {@code deals-reached}. */
  public static final Column DEALS_REACHED =
      Column.integer("deals-reached", "deals", "Deals with such a game.")
          .headed("deals where it came up");

  /** The column {@code mean-wall}. */
  public static final Column MEAN_WALL =
      Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then.")
          .within(0, Limits.TILES);

  /** The column {@code measure}. */
  public static final Column MEASURE = Column.text("measure", "What is measured.").filled();

  /** The column {@code unit}. */
  public static final Column UNIT =
      Column.text("unit", "\"share of games\", or \"per game\".")
          .oneOf("share of games", "per game");

  /** The column {@code difference}. */
  public static final Column DIFFERENCE =
      Column.decimalInterval(
              "difference",
              "as in unit",
              "Mean of the games with \"option\" less the same games with the other option, \"compared-with\", in these games alone.")
          .headed("difference in 100 such games")
          .shownTo(1);

  /** The column {@code method}. */
  public static final Column METHOD =
      Column.text(
          "method",
          "How the interval was computed; \"too few\" where fewer than "
              + FEW
              + " deals have such a game, \"no spread\" where all came to the same.");

  /** The column {@code p}. */
  public static final Column P =
      Column.decimal("p", "chance", "Chance of a difference this large by luck alone.")
          .within(0, Limits.CHANCE);

  /** The column {@code p-holm}. */
  public static final Column P_HOLM =
      Column.decimal(
              "p-holm",
              "chance",
              "The same by Holm: for all situations and options of the primary measure taken together, and for those of all the other measures.")
          .within(0, Limits.CHANCE);

  private BranchColumns() {}

  /**
   * What tells situations apart; a file has those that its study asks for.
   *
   * @return from left to right
   */
  public static List<Column> situation() {
    return List.of(EXPOSURES_ON_ONE_RACK, AWAY, WALL, PASS, PAIRS, JOKERS);
  }

  /**
   * All columns of the file.
   *
   * @return from left to right
   */
  public static List<Column> all() {
    return List.of(
        OPTION,
        COMPARED_WITH,
        SEAT_GAMES,
        GAMES,
        DEALS_REACHED,
        MEAN_WALL,
        MEASURE,
        UNIT,
        DIFFERENCE,
        METHOD,
        P,
        P_HOLM);
  }
}
