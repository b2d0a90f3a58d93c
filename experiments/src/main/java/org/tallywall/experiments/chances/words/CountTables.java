package org.tallywall.experiments.chances.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.experiments.chances.Counted;
import org.tallywall.reports.figure.Axis;
import org.tallywall.reports.figure.Caption;
import org.tallywall.reports.figure.PartBars;
import org.tallywall.reports.figure.Slide;
import org.tallywall.reports.figure.Standing;
import org.tallywall.reports.table.Cell;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.Rounding;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/**
 * The chances of every count, of one sum or of two side by side: as tables and as bars.
 *
 * @param stem the name of table and chart in files
 * @param title the title of both
 * @param counted what is counted, for a heading: "jokers"
 * @param hundred what the bars are cut of, such as "of 100 deals"
 * @param sums one or two
 */
record CountTables(String stem, String title, String counted, String hundred, List<Sum> sums) {
  /** What is rarer is not given a row of its own. */
  private static final double LEAST_SHOWN = 0.0005;

  /**
   * One sum.
   *
   * @param name its heading where there are two, such as "13 tiles"
   * @param mark what its columns end in where there are two, such as "13"
   * @param counts its chances
   */
  record Sum(String name, String mark, Counted counts) {}

  Told.Tables tables() {
    return new Told.Tables(table(true), table(false));
  }

  private Table table(boolean brief) {
    TableBuilder table = Table.builder(stem, title);
    Column count =
        brief
            ? Column.text("count", "How many there are.")
            : Column.integer("count", counted, "How many there are.");
    table.columns(count.headed(counted));
    for (Sum sum : sums) {
      table.columns(column(sum, "exactly", "exactly so many"));
      table.columns(column(sum, "at-least", "so many or more"));
    }
    int from = brief ? first() : least();
    int to = brief ? last() : most();
    for (int k = from; k <= to; k++) {
      List<Cell> row = new ArrayList<>();
      row.add(brief ? Cell.text(label(k, from, to)) : Cell.whole(k));
      for (Sum sum : sums) {
        row.add(Cell.decimal(brief ? part(sum, k, from, to) : sum.counts().exactly(k)));
        row.add(Cell.decimal(sum.counts().atLeast(brief && k == from ? least() : k)));
      }
      table.row(row);
    }
    if (brief) {
      Rounded.notes(table);
    }
    return table.build();
  }

  private Column column(Sum sum, String kind, String words) {
    boolean one = sums.size() == 1;
    String heading = kind.replace('-', ' ');
    return Column.rate(
            one ? kind : kind + "-" + sum.mark(),
            "share of cases",
            "The chance of " + words + (one ? "." : " with " + sum.name() + "."))
        .headed(one ? heading : sum.name() + ", " + heading);
  }

  /** Of 100 such cases, how many have none, one, two …; nothing where only one thing can be. */
  Optional<PartBars> bars(String note) {
    int from = first();
    int to = Math.min(last(), from + PartBars.MOST_PARTS - 1);
    if (from == to) {
      return Optional.empty();
    }
    List<String> parts = new ArrayList<>();
    for (int k = from; k <= to; k++) {
      parts.add(label(k, from, to));
    }
    List<PartBars.Bar> bars = new ArrayList<>();
    List<String> sentences = new ArrayList<>();
    for (Sum sum : sums) {
      List<Double> values = new ArrayList<>();
      List<String> said = new ArrayList<>();
      for (int k = from; k <= to; k++) {
        values.add(PartBars.WHOLE * part(sum, k, from, to));
        said.add(
            parts.get(k - from) + ": " + Rounding.nearest(values.get(k - from), 1).toPlainString());
      }
      bars.add(new PartBars.Bar(sum.name(), Standing.COMPARED, values));
      sentences.add(sum.name() + ", " + hundred + ": " + String.join(", ", said) + ".");
    }
    Caption caption =
        new Caption(
            stem,
            title,
            String.join(" ", sentences),
            List.of(note),
            new Slide("", "", List.of(How.EXACT)));
    return Optional.of(new PartBars(caption, new Axis(hundred, ""), parts, bars, List.of()));
  }

  /** The chance of a row, to which rarer counts at both ends are added. */
  private double part(Sum sum, int k, int from, int to) {
    if (k == to) {
      return sum.counts().atLeast(k == from ? least() : k);
    }
    return k == from ? 1 - sum.counts().atLeast(k + 1) : sum.counts().exactly(k);
  }

  private String label(int k, int from, int to) {
    if (k == to && to < most()) {
      return k + " or more";
    } else if (k == from && from > least()) {
      return k + " or fewer";
    }
    return k == 0 ? "none" : Integer.toString(k);
  }

  private int least() {
    return sums.stream().mapToInt(sum -> sum.counts().least()).min().orElse(0);
  }

  private int most() {
    return sums.stream().mapToInt(sum -> sum.counts().most()).max().orElse(0);
  }

  /** The lowest count with a row of its own: fewer are rare in every sum. */
  private int first() {
    int k = least();
    while (k < most() && highest(k + 1, false) < LEAST_SHOWN) {
      k++;
    }
    return k;
  }

  /** The highest count with a row of its own: more are rare in every sum. */
  private int last() {
    int k = most();
    while (k > first() && highest(k, true) < LEAST_SHOWN) {
      k--;
    }
    return k;
  }

  /** Of all sums, the highest chance of so many or more, or of fewer. */
  private double highest(int k, boolean more) {
    return sums.stream()
        .mapToDouble(sum -> more ? sum.counts().atLeast(k) : 1 - sum.counts().atLeast(k))
        .max()
        .orElse(0);
  }
}
