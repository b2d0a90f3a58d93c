package org.tallywall.experiments.design.table;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tallywall.core.card.Line;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.answer.Measures;
import org.tallywall.experiments.answer.PlayerLabel;
import org.tallywall.experiments.answer.Summary;
import org.tallywall.experiments.paper.AimTables;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.AimTally;
import org.tallywall.experiments.tally.SeatTally;
import org.tallywall.experiments.tally.TableTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** The short tables that a person sees when a run at one fixed table is done. */
final class TableSummary {
  private static final int LINES_SHOWN = 8;
  private static final Column SHARE = Column.rate("share", "share", "A share.");

  private final Study study;
  private final ConcreteHands hands;
  private final TableTally tally;
  private final long wins;

  /**
   * A summary.
   *
   * @param study the study
   * @param hands the card's hands
   * @param tally what was counted, one deal or more
   */
  TableSummary(Study study, ConcreteHands hands, TableTally tally) {
    this.study = study;
    this.hands = hands;
    this.tally = tally;
    this.wins = tally.all().wins().sum().value().longValueExact();
  }

  /**
   * How often each seat wins and what it earns.
   *
   * @return a table for people
   */
  Table seats() {
    TableDesign design = (TableDesign) study.design();
    double confidence = study.question().confidence();
    TableBuilder table =
        Table.builder("seats", title())
            .columns(
                Column.text("seat", "The seat."),
                Column.text("player", "Who sits there."),
                Column.rateInterval("games-won", "share of games", "Games won."),
                Column.decimalInterval("points", "points", "Points per 100 games.")
                    .headed("points per 100 games"),
                Column.rate("one-away", "share of games", "One away reached.")
                    .headed("one away reached"));
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      SeatTally one = tally.seat(seat);
      long won = one.wins().sum().value().longValueExact();
      Estimate points = Measures.moments(one.points(), tally.deals()).estimate(confidence, 1);
      table.row(
          Cell.text(SeatNames.FROM_EAST.of(seat)),
          Cell.text(PlayerLabel.of(design.players().get(seat))),
          Measures.cell(new Proportion(won, tally.deals()).estimate(confidence)),
          Measures.hundredfold(points),
          Cell.ratio(one.counts().get(SeatTally.Count.ONE_AWAY), tally.deals()));
    }
    return table.note(decided()).note(ranges(confidence)).note(Summary.CAUTION).build();
  }

  private String title() {
    String words = study.question().words();
    return (words.isEmpty() ? study.question().name() : words)
        + " ("
        + CellText.of(Column.integer("deals", "deals", "Deals."), Cell.whole(tally.deals()))
        + " deals, "
        + study.card().name()
        + ")";
  }

  private String decided() {
    List<String> shares = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      long won = tally.seat(seat).wins().sum().value().longValueExact();
      shares.add(SeatNames.FROM_EAST.of(seat) + " " + share(won, wins));
    }
    String nobody = share(tally.deals() - wins, tally.deals());
    return "Nobody won "
        + nobody
        + " of the games."
        + (wins == 0 ? "" : " Of those that somebody won: " + String.join(", ", shares) + ".");
  }

  private static String ranges(double confidence) {
    return "The range in brackets would hold the true figure in "
        + CellText.of(SHARE, Cell.decimal(confidence)).replace(".0 %", " %")
        + " of such runs (games won: Wilson; points: t over deals).";
  }

  private static String share(long part, long whole) {
    return CellText.of(SHARE, Cell.ratio(part, whole));
  }

  /**
   * The lines that were won with most often.
   *
   * @return a table for people, at most eight lines
   */
  Table lines() {
    TableBuilder table =
        Table.builder("lines", "The lines won with most often")
            .columns(
                Column.text("line", "The line."),
                Column.text("nickname", "Its nickname."),
                Column.integer("value", "points", "What it pays."),
                Column.integer("ways", "hands", "Ways to make it.").headed("ways to make it"),
                Column.rate("wins", "share of wins", "Its share of all wins.")
                    .headed("of all wins"),
                Column.rate("with-it", "share", "Won with it when aimed at after the passes.")
                    .headed("won with it when aimed at after the passes"),
                Column.rate("with-any", "share", "Won with any line when aimed at then.")
                    .headed("won with any line when aimed at then"));
    IntStream.range(0, hands.lines())
        .boxed()
        .sorted(Comparator.comparingLong((Integer line) -> -won(line)))
        .limit(LINES_SHOWN)
        .filter(line -> won(line) > 0)
        .forEach(line -> table.row(row(line)));
    return table.note(AimTables.RACKS).build();
  }

  private long won(int line) {
    return tally.line(line).counts().get(AimTally.Count.WINS);
  }

  private List<Cell> row(int at) {
    Line line = hands.line(at);
    AimTally aim = tally.line(at);
    return List.of(
        Cell.text(line.id()),
        Cell.text(line.say()),
        Cell.whole(line.value()),
        Cell.whole(hands.ways(at)),
        Cell.ratio(won(at), wins),
        ofAimers(aim, AimTally.Count.AIMED_AND_WON_WITH_IT),
        ofAimers(aim, AimTally.Count.AIMED_AND_WON));
  }

  private static Cell ofAimers(AimTally aim, AimTally.Count what) {
    return Cell.ratio(aim.counts().get(what), aim.counts().get(AimTally.Count.AFTER_PASSES));
  }
}
