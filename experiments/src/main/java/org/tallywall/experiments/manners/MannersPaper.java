package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Handles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What was counted, for people and for spreadsheets. */
public final class MannersPaper {
  private static final double CONFIDENCE = 0.99;
  private static final String TITLE = "Decisions to smile at";

  private static final Column WHAT = Column.text("slip", "The kind of decision.");
  private static final Column NUMBER =
      Column.integer("number", "decisions", "How often it was made.");
  private static final Column IN_A_GAME =
      Column.decimalInterval("in-a-game", "decisions", "How often in a game, by all four players.")
          .headed("in a game");
  private static final Column GAMES =
      Column.rateInterval("games", "share of games", "Games in which it was made.");

  private final SlipCount count;

  /**
   * Tells a count.
   *
   * @param count of one game or more
   */
  public MannersPaper(SlipCount count) {
    this.count = count;
  }

  /**
   * The numbers.
   *
   * @return a row for each kind, and one for all
   */
  public Table table() {
    TableBuilder table = Table.builder("manners", TITLE).columns(WHAT, NUMBER, IN_A_GAME, GAMES);
    for (Slip slip : Slip.values()) {
      table.row(row(slip.heading(), count.of(slip)));
    }
    table.row(row("all", count.any()));
    return table.build();
  }

  private static List<Cell> row(String name, PerGame one) {
    return List.of(
        Cell.text(name),
        Cell.whole(one.number()),
        cell(one.inAGame(CONFIDENCE)),
        cell(one.games(CONFIDENCE)));
  }

  /** A mean has no range where all games are alike; below 0 nothing is counted. */
  private static Cell cell(Estimate one) {
    return one.interval()
        .<Cell>map(
            range -> Cell.interval(one.value(), range.low() < 0 ? 0 : range.low(), range.high()))
        .orElseGet(Cell::empty);
  }

  /**
   * All that is said.
   *
   * @return answer, table, customs, rules and places
   */
  public Document document() {
    List<Part> parts = new ArrayList<>();
    long games = count.any().games();
    parts.add(
        new Part.Answer(
            "%s in %s."
                .formatted(
                    Words.count(count.any().number(), "such decision", "such decisions"),
                    Words.count(games, "game", "games")),
            List.of(
                Part.Paragraph.of(
                    "Counted by the rules below from what each player knew. A decision may be right"
                        + " for once, and most of these cost little; but no teacher would show them."
                        + " Ranges hold for 99 in 100 such counts. They speak of these programmed"
                        + " players on this card, not of people."))));
    parts.add(new Part.Grid(table(), Handles.COPY));
    parts.add(customs());
    parts.add(rules());
    places().ifPresent(parts::add);
    return new Document(TITLE, parts);
  }

  private Part customs() {
    Table table =
        Table.builder("customs", "What players do there")
            .columns(
                Column.text("custom", "What players do."),
                Column.integer("number", "times", "How often.").headed("number"),
                Column.decimalInterval("in-a-game", "times", "How often in a game.")
                    .headed("in a game"))
            .row(custom("games in which somebody stops the passes", count.stops()))
            .row(custom("passes with tiles passed on unseen", count.blind()))
            .build();
    String offers =
        count.offers() == 0
            ? "Nobody was asked for tiles across."
            : "Three tiles were offered across %s of %s times."
                .formatted(Words.grouped(count.threes()), Words.grouped(count.offers()));
    return Part.Section.of(
        "In the passes", new Part.Grid(table, Handles.COPY), Part.Paragraph.of(offers));
  }

  private static List<Cell> custom(String name, PerGame one) {
    return List.of(Cell.text(name), Cell.whole(one.number()), cell(one.inAGame(CONFIDENCE)));
  }

  private static Part rules() {
    List<Part> all = new ArrayList<>();
    for (Slip slip : Slip.values()) {
      all.add(Part.Paragraph.of(slip.heading() + ": " + slip.rule()));
    }
    return section("What is counted", all);
  }

  private Optional<Part> places() {
    List<Part> all = new ArrayList<>();
    for (Slip slip : Slip.values()) {
      List<String> there = count.places(slip).stream().map(MannersPaper::said).toList();
      if (!there.isEmpty()) {
        all.add(Part.Paragraph.of(slip.heading() + ": " + String.join("; ", there)));
      }
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(section("Where to look", all));
  }

  private static Part section(String title, List<Part> parts) {
    return Part.Section.of(title, parts.toArray(new Part[0]));
  }

  private static String said(SlipCount.Place place) {
    return "game %s, step %s, %s: %s"
        .formatted(place.game(), place.step(), SeatNames.BY_NUMBER.of(place.seat()), place.move());
  }
}
