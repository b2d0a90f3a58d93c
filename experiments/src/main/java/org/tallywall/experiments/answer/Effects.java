package org.tallywall.experiments.answer;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.experiments.stats.Estimate;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Method;
import org.tallywall.experiments.stats.PairMoments;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Feature;
import org.tallywall.experiments.study.Measure;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.EffectTally;
import org.tallywall.experiments.tally.FiringTally;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * What a habit, or an option at a decision, does where it comes into play, and there alone: the
 * ratio of the summed differences to the games concerned, its standard error made linear over
 * deals.
 */
final class Effects {
  /** With fewer deals than this an interval by the normal curve would be a guess. */
  static final int FEW = 30;

  static final String TOO_FEW = "too few";
  private static final String GAMES = "games";

  private Effects() {}

  static Table branch(Study study, Design.Branch design, StudyTally tally, Certainty certainty) {
    List<Column> columns = new ArrayList<>();
    for (Map.Entry<Feature, List<Integer>> feature : design.cells().values().entrySet()) {
      columns.add(
          Column.integer(feature.getKey().text(), unit(feature.getKey()), meaning(feature)));
    }
    columns.add(Column.text("option", "What is done at the decision."));
    columns.add(Column.text("compared-with", "The other option, on the same tiles."));
    columns.addAll(common("the decision was met in this square"));
    TableBuilder table =
        Table.builder("branch", "Each option of one decision on the same tiles, square by square")
            .columns(columns);
    int others = design.options().size() - 1;
    for (int cell = 0; cell < design.cells().count(); cell++) {
      for (int option = 0; option < others; option++) {
        List<Cell> who = new ArrayList<>();
        design.cells().at(cell).forEach(value -> who.add(Cell.whole(value)));
        who.add(Cell.text(design.options().get(option + 1).text()));
        who.add(Cell.text(design.options().get(0).text()));
        rows(table, who, tally.firing(cell * others + option), study, certainty);
      }
    }
    return table.build();
  }

  private static String unit(Feature feature) {
    return feature == Feature.EXPOSURES ? "exposures" : "tiles";
  }

  private static String meaning(Map.Entry<Feature, List<Integer>> feature) {
    return switch (feature.getKey()) {
      case EXPOSURES -> "Most exposures on one rack of the other players.";
      case AWAY -> "Tiles away of the studied player's rack.";
      case WALL ->
          "Most tiles left in the wall; the square reaches down to the next smaller one, the last"
              + " to 0.";
    };
  }

  private static List<Column> common(String when) {
    return List.of(
        Column.integer("seat-games", GAMES, "Games of the studied player, whatever happened."),
        Column.integer(GAMES, GAMES, "Games in which " + when + "."),
        Column.integer("deals-reached", "deals", "Deals with such a game."),
        Column.decimal("mean-wall", "tiles", "Mean number of tiles left in the wall then."),
        Column.text("measure", "What is measured."),
        Column.text("unit", "\"share of games\", or \"per game\"."),
        Column.decimalInterval(
            "difference",
            "as in unit",
            "Mean gap to the same games without it, in these games alone."),
        Column.text(
            "method",
            "How the interval was computed; \"too few\" where fewer than "
                + FEW
                + " deals have such a game."));
  }

  private static void rows(
      TableBuilder table, List<Cell> who, FiringTally firing, Study study, Certainty certainty) {
    List<Measure> measures = study.question().measures();
    for (int at = 0; at < measures.size(); at++) {
      if (at > 0 && !study.question().secondary().contains(measures.get(at))) {
        continue;
      }
      Optional<Estimate> effect = effect(firing, at, certainty);
      List<Cell> cells = new ArrayList<>(who);
      cells.add(Cell.whole(firing.seatGames()));
      cells.add(Cell.whole(firing.games()));
      cells.add(Cell.whole(firing.reached()));
      cells.add(Cell.ratio(firing.wall(), firing.games()));
      cells.add(Cell.text(measures.get(at).text()));
      cells.add(Cell.text(Differences.unit(measures.get(at))));
      cells.add(effect.map(Measures::cell).orElse(Cell.empty()));
      cells.add(effect.map(Measures::method).orElse(Cell.text(TOO_FEW)));
      table.row(cells);
    }
  }

  /** The effect where it came into play; empty where that is too rare to say. */
  static Optional<Estimate> effect(FiringTally firing, int measure, Certainty certainty) {
    if (firing.reached() < FEW) {
      return Optional.empty();
    }
    EffectTally effect = firing.effect(measure);
    PairMoments moments =
        new PairMoments(
            firing.deals(),
            effect.difference().value(),
            effect.games().value(),
            effect.differenceSquared().value(),
            effect.product().value(),
            effect.gamesSquared().value());
    Estimate ratio = certainty.shown(moments.estimate(certainty.confidence()));
    boolean nothing = effect.differenceSquared().value().equals(BigInteger.ZERO);
    return Optional.of(
        nothing && certainty.fixed()
            ? Estimate.of(0, new Interval(0, 0), Method.RATIO_OVER_DEALS)
            : ratio);
  }
}
