package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.tally.SeatTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** What a person reads when several ways of playing were compared. */
final class ArmsSummary {
  private static final int HUNDRED = 100;
  private static final double GAIN_WORTH_SAYING = 1.05;

  private final StudyAnswer answer;
  private final List<Way> ways;
  private final List<Difference> differences;

  ArmsSummary(StudyAnswer answer) {
    this.answer = answer;
    this.ways = Way.of(answer.study(), answer.tally());
    this.differences = answer.differences();
  }

  Summary summary() {
    List<String> sentences = new ArrayList<>();
    sentences.add(Extents.title(answer));
    differences.stream()
        .filter(one -> one.role() == Difference.Role.PRIMARY)
        .forEach(one -> sentences.add(answer(one)));
    sentences.add(Extents.end(answer) + " " + Summary.CAUTION);
    return new Summary(sentences, List.of(waysTable(), differencesTable()));
  }

  private String answer(Difference one) {
    StringBuilder text =
        new StringBuilder(LayWords.of(one.arm(), one.baseline(), one.measure(), one.estimate()));
    PairNumbers numbers = one.numbers();
    long differing = numbers.differing();
    text.append(" It made a difference in ")
        .append(Extents.count(differing))
        .append(" of the deals");
    OptionalDouble gain = numbers.gain();
    if (gain.isPresent() && gain.getAsDouble() >= GAIN_WORTH_SAYING) {
      text.append("; playing the same deals was worth as much as ")
          .append(Rounding.nearest(gain.getAsDouble(), 1).toPlainString())
          .append(" times as many");
    }
    text.append(".");
    OptionalDouble detectable = one.detectable();
    if (detectable.isPresent() && detectable.getAsDouble() > 0) {
      int places = Math.max(0, Rounding.places(HUNDRED * detectable.getAsDouble()));
      text.append(" The smallest difference that this run would have noticed nine times in ten: ")
          .append(Rounding.nearest(HUNDRED * detectable.getAsDouble(), places).toPlainString())
          .append(one.measure() == Measure.POINTS ? " points in 100 games." : " in 100 games.");
    }
    return text.toString();
  }

  /** A way of playing for readers: for a sweep the setting's last word and its value. */
  private String label(String arm) {
    if (answer.study().design() instanceof Design.Sweep sweep) {
      return sweep.setting().substring(sweep.setting().lastIndexOf('.') + 1) + " " + arm;
    }
    return arm;
  }

  private Table waysTable() {
    TableBuilder table =
        Table.builder("ways", "The ways of playing")
            .columns(
                Column.text("way", "The way of playing.").headed("way of playing"),
                Column.rate("games-won", "share of games", "Games won."),
                Column.decimal("points", "points", "Points per 100 games.")
                    .headed("points per 100 games"),
                Column.rate("threw", "share of games", "Threw the winning tile.")
                    .headed("threw the winning tile"),
                Column.rate("one-away", "share of games", "One away reached.")
                    .headed("one away reached"),
                Column.rate("wall", "share of games", "Wall games.").headed("wall games"));
    for (Way way : ways) {
      long games = way.seatGames();
      table.row(
          Cell.text(label(way.name())),
          Cell.ratio(way.wins(), games),
          Cell.decimal(HUNDRED * way.tally().all().points().sum().value().doubleValue() / games),
          Cell.ratio(count(way, SeatTally.Count.THREW), games),
          Cell.ratio(count(way, SeatTally.Count.ONE_AWAY), games),
          Cell.ratio(count(way, SeatTally.Count.WALL_GAME), games));
    }
    return table.build();
  }

  private static long count(Way way, SeatTally.Count what) {
    return way.tally().all().counts().get(what);
  }

  private Table differencesTable() {
    TableBuilder table =
        Table.builder("differences", "On the same deals, what was declared before the run")
            .columns(
                Column.text("way", "The way of playing.").headed("way of playing"),
                Column.text("with", "The one compared with.").headed("compared with"),
                Column.text("measure", "What is measured."),
                Column.decimalInterval("gap", "in 100 games", "The difference in 100 games.")
                    .headed("more or fewer in 100 games"),
                Column.integer("deals", "deals", "Deals in which it made a difference.")
                    .headed("deals in which it made a difference"));
    for (Difference one : differences) {
      if (one.role() != Difference.Role.EXPLORATORY) {
        table.row(
            Cell.text(label(one.arm())),
            Cell.text(label(one.baseline())),
            Cell.text(one.measure().words()),
            Measures.hundredfold(one.estimate()),
            Cell.whole(one.numbers().differing()));
      }
    }
    return table.build();
  }
}
