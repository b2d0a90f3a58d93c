package org.tallywall.reports.figure;

import java.util.List;
import java.util.Optional;

/**
 * A field of squares, each with a difference: plus or minus only where it is clear, nothing where
 * it cannot be told, and words where there was too little to look at. One border may be drawn
 * through it: the rule to remember.
 *
 * @param caption what stands around it
 * @param measure what the numbers in the squares are
 * @param across what the columns are, with their labels
 * @param down what the rows are, with their labels
 * @param squares row by row, a square for every column
 * @param border the border, or none
 */
public record SquareMap(
    Caption caption,
    Axis measure,
    Side across,
    Side down,
    List<List<Square>> squares,
    Optional<Border> border)
    implements Figure {

  /**
   * Takes the figure and copies its lists.
   *
   * @param caption what stands around it
   * @param measure what the numbers are
   * @param across what the columns are
   * @param down what the rows are
   * @param squares row by row, a square for every column
   * @param border the border, or none
   * @throws IllegalArgumentException if squares are missing or the border does not fit
   */
  public SquareMap {
    squares = squares.stream().map(List::copyOf).toList();
    String where = caption.where();
    int columns = across.labels().size();
    int rows = down.labels().size();
    Demand.that(squares.size() == rows, where, "there must be squares for every row");
    for (List<Square> row : squares) {
      Demand.that(row.size() == columns, where, "there must be a square for every column");
    }
    border.ifPresent(
        line -> {
          boolean fits = line.columnsBefore().size() == rows;
          fits &= line.columnsBefore().stream().allMatch(c -> c >= Border.NO_LINE && c <= columns);
          Demand.that(fits, where, "the border needs a place between columns for every row");
        });
  }

  /**
   * A side of the field.
   *
   * @param axis what it is
   * @param labels at least one, from left to right or from top to bottom
   */
  public record Side(Axis axis, List<String> labels) {
    /**
     * Takes a side and copies its list.
     *
     * @param axis what it is
     * @param labels at least one
     * @throws IllegalArgumentException if there is no label or one has no words
     */
    public Side {
      labels = List.copyOf(labels);
      Demand.that(!labels.isEmpty(), "a side", "there is no label");
      labels.forEach(label -> Demand.words("a side", "words in a label", label));
    }
  }

  /**
   * One square: plus or minus shows only where it is clear.
   *
   * @param estimate the difference and its range; none if there was too little to look at
   * @param sign 1 where plus is clear, −1 where minus is, else 0
   */
  public record Square(Optional<PlotValue> estimate, int sign) {
    /**
     * Takes a square.
     *
     * @param estimate the difference and its range; none if there was too little to look at
     * @param sign 1 where plus is clear, −1 where minus is, else 0
     * @throws IllegalArgumentException if a sign is called clear whose range does not leave out 0
     */
    public Square {
      int range = estimate.map(PlotValue::clearSign).orElse(0);
      Demand.that(sign == 0 || sign == range, "a square", "the sign is not that of the range");
    }

    /**
     * Makes a square whose range alone tells whether plus or minus is clear.
     *
     * @param estimate the difference and its range
     * @return the square
     */
    public static Square of(PlotValue estimate) {
      return new Square(Optional.of(estimate), estimate.clearSign());
    }

    /**
     * Makes a square that is not clear, whatever its own range says: among many squares some range
     * leaves out 0 by luck.
     *
     * @param estimate the difference and its range
     * @return the square
     */
    public static Square unclear(PlotValue estimate) {
      return new Square(Optional.of(estimate), 0);
    }

    /**
     * Makes a square for which there was too little to look at.
     *
     * @return the square
     */
    public static Square tooFew() {
      return new Square(Optional.empty(), 0);
    }
  }

  /**
   * A line through the field from top to bottom, in steps. Rows may have no part in it.
   *
   * @param columnsBefore for every row, how many columns lie at the left of the line, or {@link
   *     #NO_LINE}
   * @param words the rule that it stands for
   */
  public record Border(List<Integer> columnsBefore, String words) {
    /** Stands for a row that the line leaves out. */
    public static final int NO_LINE = -1;

    /**
     * Takes a border and copies its list.
     *
     * @param columnsBefore for every row, how many columns lie at the left, or {@link #NO_LINE}
     * @param words the rule
     * @throws IllegalArgumentException if the words are missing
     */
    public Border {
      columnsBefore = List.copyOf(columnsBefore);
      Demand.words("a border", "words", words);
    }
  }

  @Override
  public <R> R match(Cases<R> cases) {
    return cases.map(this);
  }
}
