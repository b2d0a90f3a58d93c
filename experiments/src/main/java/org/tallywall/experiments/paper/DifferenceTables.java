package org.tallywall.experiments.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tallywall.experiments.results.Ranged;
import org.tallywall.experiments.results.Results;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Comparisons on the same deals, in words for readers. */
final class DifferenceTables {
  private final Results results;
  private final List<Difference> all;

  DifferenceTables(Results results) {
    this.results = results;
    this.all = Difference.all(results);
  }

  boolean any() {
    return !all.isEmpty();
  }

  /** The one table of the notes: what answers the question, way by way. */
  Table brief() {
    String title = "The difference on the same deals";
    return table("differences", title, all.stream().filter(Difference::isPrimary).toList());
  }

  /** Everything compared: declared first, then what was looked at besides. */
  Table whole() {
    return table("differences-in-full", "Every difference on the same deals", all);
  }

  private Table table(String stem, String title, List<Difference> shown) {
    TableBuilder table =
        Table.builder(stem, title)
            .columns(
                Column.text("measure", "What was measured."),
                Column.text("arm", "The way of playing.").headed("way of playing"),
                Column.text("baseline", "What it is compared with.").headed("compared with"),
                number("level", "the one").headed("this way"),
                number("baseline-level", "the other").headed("compared with, level"),
                Column.decimalInterval("difference", "in 100 games", "One less the other, range.")
                    .headed("difference on the same deals")
                    .shownTo(1),
                Column.text("told-apart", "Whether plus or minus is clear.").headed("clear?"),
                Column.integer(
                        "discordant", "deals", "Deals in which the two came out differently.")
                    .headed("deals in which it made a difference"),
                Column.text("detectable", "The smallest difference this run would have noticed.")
                    .headed("smallest difference noticed"),
                Column.text("role", "Whether it was declared before the run."));
    shown.forEach(difference -> table.row(row(difference)));
    shown.stream().findFirst().ifPresent(first -> table.note(explained()));
    return table.build();
  }

  private static Column number(String name, String whose) {
    return Column.decimal(name, "in 100 games", "The level of " + whose + ".").shownTo(1);
  }

  private List<Cell> row(Difference one) {
    List<Cell> cells = new ArrayList<>();
    cells.add(Cell.text(MeasureWords.heading(one.measure())));
    cells.add(Cell.text(one.arm()));
    cells.add(Cell.text(one.baseline()));
    cells.add(hundred(one.row().number("level")));
    cells.add(hundred(one.row().number("baseline-level")));
    Optional<Ranged> hundred = one.inHundred();
    cells.add(hundred.map(Ranged::cell).orElse(hundred(one.row().number("difference"))));
    cells.add(Cell.text(clear(one)));
    cells.add(
        one.row().text("discordant").isEmpty()
            ? Cell.empty()
            : Cell.whole(one.row().count("discordant")));
    OptionalDouble detectable = one.row().number("detectable");
    cells.add(
        Cell.text(detectable.isPresent() ? Wording.upTo(100 * detectable.getAsDouble()) : ""));
    cells.add(Cell.text(role(one.role())));
    return cells;
  }

  private static Cell hundred(OptionalDouble number) {
    return number.isPresent() ? Cell.decimal(100 * number.getAsDouble()) : Cell.empty();
  }

  private String clear(Difference one) {
    if (one.isBaseline() || one.difference().isEmpty()) {
      return "";
    }
    return switch (one.clearSign(results.confidence())) {
      case 1 -> "yes, more";
      case -1 -> "yes, less";
      default -> "could not be told";
    };
  }

  private static String role(String role) {
    return switch (role) {
      case "primary" -> "the question";
      case "secondary" -> "declared before the run";
      case "exploratory" -> "looked at besides; only a new run could confirm it";
      default -> role;
    };
  }

  private String explained() {
    return "In 100 games. A difference is clear where its range in brackets, which would hold the true figure in %s of 100 such runs, leaves out 0, and where it stays clear after all declared comparisons are counted together (Holm)."
        .formatted(Wording.level(results.confidence()));
  }
}
