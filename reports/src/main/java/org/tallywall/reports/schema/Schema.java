package org.tallywall.reports.schema;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.tallywall.reports.table.Column;

/** Every file of results with its columns, and what must be true of a row of it. */
public final class Schema {
  private static final Map<String, List<Column>> FILES =
      Map.ofEntries(
          entry(WinRateColumns.FILE, WinRateColumns.all()),
          entry(DifferenceColumns.FILE, DifferenceColumns.all()),
          entry(StoppingColumns.FILE, StoppingColumns.all()),
          entry(SweepColumns.FILE, SweepColumns.all()),
          entry(HandChoiceColumns.FILE, HandChoiceColumns.all()),
          entry(FamilyColumns.FILE, FamilyColumns.all()),
          entry(EndingColumns.FILE, EndingColumns.all()),
          entry(PassColumns.FILE, PassColumns.all()),
          entry(OverallColumns.FILE, OverallColumns.all()),
          entry(RuleColumns.FILE, RuleColumns.all()),
          entry(FaultColumns.FILE, FaultColumns.all()),
          entry(RatingColumns.FILE, RatingColumns.all()),
          entry(RatingDifferenceColumns.FILE, RatingDifferenceColumns.all()),
          entry(DefenseColumns.FILE, DefenseColumns.all()),
          entry(BranchColumns.FILE, branch()),
          entry(WayColumns.FILE, WayColumns.all()));

  private static final Map<String, List<Sum>> SUMS =
      Map.ofEntries(
          entry(WinRateColumns.FILE, wins()),
          entry(DifferenceColumns.FILE, differences()),
          entry(HandChoiceColumns.FILE, aims()),
          entry(FamilyColumns.FILE, aims()),
          entry(EndingColumns.FILE, endings()),
          entry(
              PassColumns.FILE,
              List.of(
                  Sum.of(PassColumns.GAMES, PassColumns.STOPPED),
                  Sum.of(PassColumns.GAMES, PassColumns.VOID))),
          entry(RatingColumns.FILE, List.of(Sum.of(RatingColumns.GAMES, RatingColumns.WINS))),
          entry(
              DefenseColumns.FILE,
              List.of(
                  Sum.of(DefenseColumns.SEAT_GAMES, DefenseColumns.GAMES),
                  Sum.of(DefenseColumns.SEAT_GAMES, DefenseColumns.GAMES_COMPARED),
                  Sum.of(DefenseColumns.GAMES_COMPARED, DefenseColumns.DEALS_COMPARED))),
          entry(
              BranchColumns.FILE,
              List.of(
                  Sum.of(BranchColumns.SEAT_GAMES, BranchColumns.GAMES),
                  Sum.of(BranchColumns.GAMES, BranchColumns.DEALS_REACHED))));

  private Schema() {}

  private static List<Column> branch() {
    return Stream.concat(BranchColumns.situation().stream(), BranchColumns.all().stream()).toList();
  }

  private static List<Sum> wins() {
    return List.of(
        Sum.of(
            WinRateColumns.GAMES,
            WinRateColumns.WINS,
            WinRateColumns.WALL_GAME,
            WinRateColumns.VOID),
        Sum.of(
            WinRateColumns.GAMES,
            WinRateColumns.WON_ON_OWN_DRAW,
            WinRateColumns.WON_ON_DISCARD,
            WinRateColumns.THREW_THE_WINNING_TILE,
            WinRateColumns.ONLY_PAID,
            WinRateColumns.WALL_GAME,
            WinRateColumns.VOID),
        Sum.of(WinRateColumns.GAMES, WinRateColumns.WON_AFTER_REDEEMING),
        Sum.of(WinRateColumns.GAMES, WinRateColumns.WON_JOKERLESS));
  }

  private static List<Sum> differences() {
    return List.of(
        Sum.of(DifferenceColumns.DEALS, DifferenceColumns.DISCORDANT),
        Sum.of(DifferenceColumns.DISCORDANT, DifferenceColumns.MORE, DifferenceColumns.FEWER));
  }

  private static List<Sum> aims() {
    return List.of(
        Sum.of(AimColumns.WINS, AimColumns.AIMED_AND_WON_WITH_IT),
        Sum.of(AimColumns.AIMED_AFTER_PASSES, AimColumns.AIMED_AND_WON_WITH_IT));
  }

  private static List<Sum> endings() {
    return List.of(
        Sum.of(
            EndingColumns.GAMES,
            EndingColumns.WON_BY_DRAW,
            EndingColumns.WON_BY_EXCHANGE,
            EndingColumns.WON_ON_DISCARD,
            EndingColumns.WON_BEFORE_PLAY,
            EndingColumns.WALL_GAMES,
            EndingColumns.VOID_GAMES));
  }

  /**
   * The files that are known.
   *
   * @return their names without the ending
   */
  public static Set<String> files() {
    return FILES.keySet();
  }

  /**
   * The columns of a file.
   *
   * @param file its name without the ending
   * @return from left to right; none of a file that is not known
   */
  public static List<Column> columns(String file) {
    return FILES.getOrDefault(file, List.of());
  }

  /**
   * Which counts of a row are parts of which others.
   *
   * @param file the name of a file without the ending
   * @return all of them; none of a file that is not known
   */
  public static List<Sum> sums(String file) {
    return SUMS.getOrDefault(file, List.of());
  }
}
