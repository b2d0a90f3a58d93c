package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.reports.results.Results;
import org.tallywall.reports.results.Sheet;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** How often the seats or ways of playing win, in words for readers. */
final class WinTables {
  private static final String GAMES = "in 100 games";

  private final Results results;

  WinTables(Results results) {
    this.results = results;
  }

  /** The one table of the notes. */
  Table brief() {
    List<Pick> picks = new ArrayList<>(who());
    picks.addAll(levels());
    return Pick.table("wins", title(), picks, Ways.rows(results)).note(ranges()).build();
  }

  /** Where the games go. */
  Table parts() {
    List<Pick> picks = new ArrayList<>(who());
    picks.add(perGame("won-on-own-draw", "won on the own draw"));
    picks.add(perGame("won-on-discard", "won on a discard"));
    picks.add(perGame("threw-the-winning-tile", "threw the winning tile"));
    picks.add(perGame("only-paid", "somebody else won and it only paid"));
    picks.add(perGame("wall-game", "wall game"));
    picks.add(perGame("void", "void, three hands dead"));
    return table("parts", "Where 100 games go", picks, Ways.rows(results)).build();
  }

  /** How hands are won. */
  Table hands() {
    List<Pick> picks = new ArrayList<>(who());
    picks.add(perGame("won-after-redeeming", "won after redeeming a joker, in 100 games"));
    picks.add(perGame("won-jokerless", "won without jokers, in 100 games"));
    picks.add(
        Pick.mean("wall-at-win", "tiles", "Mean number of tiles left in the wall at a win.")
            .headed("tiles left in the wall at a win"));
    picks.add(
        Pick.mean("jokers-at-win", "tiles", "Mean number of jokers in the winning hand.")
            .headed("jokers in the winning hand"));
    picks.add(
        Pick.mean("exposures", "per game", "Exposures made a game, on average.")
            .headed("exposures a game"));
    picks.add(
        Pick.mean("exchanges", "per game", "Jokers redeemed a game, on average.")
            .headed("jokers redeemed a game"));
    return table("how-hands-are-won", "How hands are made and won", picks, Ways.rows(results))
        .build();
  }

  /** The same as the brief one, with every row of the file. */
  Table whole() {
    List<Pick> picks = new ArrayList<>(who());
    picks.addAll(levels());
    return table("wins-in-full", title(), picks, results.rows("win-rates")).note(ranges()).build();
  }

  private TableBuilder table(String stem, String title, List<Pick> picks, List<Sheet.Row> rows) {
    List<Pick> there = picks.stream().filter(this::isThere).toList();
    return Pick.table(stem, title, there, rows);
  }

  private boolean isThere(Pick pick) {
    String name = pick.column().name();
    boolean never =
        name.equals("void")
            && results.rows("win-rates").stream().allMatch(row -> row.count(name) == 0);
    boolean there = results.sheet("win-rates").orElseThrow().has(name);
    return !never && (there || name.equals("of-decided"));
  }

  private String title() {
    return Ways.oneTable(results)
        ? "How often each seat wins, and what it earns"
        : "How often each way of playing wins, and what it earns";
  }

  private List<Pick> who() {
    List<Pick> picks = new ArrayList<>();
    if (!Ways.oneTable(results)) {
      picks.add(Pick.arm(results));
    }
    picks.add(Pick.words("seat", "Where it sits; East deals and begins.", Ways::seat));
    if (Ways.oneTable(results)) {
      picks.add(Pick.words("player", "Who sits there.", WinTables::player));
    }
    return picks;
  }

  private static String player(Sheet.Row row) {
    return row.text("player").equals("all") ? "all four players" : row.text("player");
  }

  private List<Pick> levels() {
    return List.of(
        Pick.rangeInHundred("win-rate", GAMES, "Games won in 100, with the range.")
            .headed("games won in 100"),
        Pick.inHundred(
                "of-decided",
                "in 100 games that somebody won",
                "Its wins among the games that were not wall games.",
                WinTables::ofDecided)
            .headed("of 100 games that somebody won"),
        Pick.rangeInHundred("points", "points per 100 games", "Points gained or lost, with range.")
            .headed("points per 100 games"),
        Pick.inHundred(
                "one-away-reached",
                GAMES,
                "Games in which it was one away from a line between two turns, or won.",
                row -> row.number("one-away-reached"))
            .headed("one away reached in 100 games"));
  }

  private static OptionalDouble ofDecided(Sheet.Row row) {
    long decided = row.count("games") - row.count("wall-game") - row.count("void");
    return Pick.quotient(row.number("wins"), decided);
  }

  private static Pick perGame(String name, String heading) {
    return Pick.inHundred(
            name,
            GAMES,
            "Games in 100: " + heading + ".",
            row -> Pick.quotient(row.number(name), row.count("games")))
        .headed(heading);
  }

  private String ranges() {
    return "The range in brackets would hold the true figure in %s of 100 such runs. %s deals were played."
        .formatted(
            Wording.level(results.confidence()), CellText.grouped(Long.toString(results.deals())));
  }
}
