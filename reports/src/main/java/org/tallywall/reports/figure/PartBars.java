package org.tallywall.reports.figure;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A bar for each thing compared, cut into the same parts that add to 100: where 100 of something
 * go. The parts that changed most carry the difference and its range; which they are, the caller
 * says.
 *
 * @param caption what stands around it
 * @param axis what the 100 are, such as "where 100 games go"
 * @param parts names of the parts from left to right, two to six
 * @param bars at least one
 * @param changes differences to be written at parts; at most two a bar
 */
public record PartBars(
    Caption caption, Axis axis, List<String> parts, List<Bar> bars, List<Change> changes)
    implements Figure {

  /** What the parts of a bar add to. */
  public static final double WHOLE = 100;

  /** The most parts that patterns can tell apart. */
  public static final int MOST_PARTS = 6;

  private static final double ROUNDING_ERROR = 1e-6;
  private static final int MOST_CHANGES = 2;

  /**
   * Takes the figure and copies its lists.
   *
   * @param caption what stands around it
   * @param axis what the 100 are
   * @param parts names of the parts
   * @param bars at least one
   * @param changes differences to be written at parts
   * @throws IllegalArgumentException if a bar does not add to 100, or a number of parts is wrong
   */
  public PartBars {
    parts = List.copyOf(parts);
    bars = List.copyOf(bars);
    changes = List.copyOf(changes);
    String where = caption.where();
    boolean number = parts.size() >= 2 && parts.size() <= MOST_PARTS;
    Demand.that(number, where, "a bar has two to " + MOST_PARTS + " parts");
    Demand.that(!bars.isEmpty(), where, "there is no bar");
    for (Bar bar : bars) {
      check(where, bar, parts.size());
    }
    check(where, changes, bars.size(), parts.size());
  }

  /**
   * One bar.
   *
   * @param label what it stands for
   * @param standing whether the others are compared with it
   * @param values a number for every part, none below 0, together 100
   */
  public record Bar(String label, Standing standing, List<Double> values) {
    /**
     * Takes a bar and copies its list.
     *
     * @param label what it stands for
     * @param standing whether the others are compared with it
     * @param values a number for every part
     * @throws IllegalArgumentException if the label is missing
     */
    public Bar {
      Demand.words("a bar", "a name", label);
      values = List.copyOf(values);
    }
  }

  /**
   * A difference that is written at a part.
   *
   * @param bar the bar, from 0
   * @param part the part, from 0
   * @param difference how much more of the 100 than in the bar compared with, and its range
   */
  public record Change(int bar, int part, PlotValue difference) {}

  private static void check(String where, Bar bar, int parts) {
    String which = where + ", bar " + bar.label();
    Demand.that(bar.values().size() == parts, which, "there must be a number for every part");
    double sum = 0;
    for (double value : bar.values()) {
      Demand.that(value >= 0, which, "no part is below 0");
      sum += value;
    }
    Demand.that(Math.abs(sum - WHOLE) <= ROUNDING_ERROR, which, "the parts must add to 100");
  }

  private static void check(String where, List<Change> changes, int bars, int parts) {
    Set<List<Integer>> places = new HashSet<>();
    int[] perBar = new int[bars];
    for (Change change : changes) {
      boolean there = change.bar() >= 0 && change.bar() < bars;
      there &= change.part() >= 0 && change.part() < parts;
      Demand.that(there, where, "a difference belongs to a bar and part that is there");
      boolean once = places.add(List.of(change.bar(), change.part()));
      Demand.that(once, where, "a part carries one difference");
      boolean room = ++perBar[change.bar()] <= MOST_CHANGES;
      Demand.that(room, where, "a bar carries at most two differences");
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.bars(this);
  }
}
