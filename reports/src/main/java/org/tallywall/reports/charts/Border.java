package org.tallywall.reports.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.figure.SquareMap;
import org.tallywall.reports.figure.SquareMap.Square;

/**
 * The border that a map of squares is remembered by: in a row a place between columns with one sign
 * at its left and the other at its right, moving to one side only from row to row. Clear squares
 * alone draw it. A row has a part in it only where they stand at both of its sides, or where all of
 * the row is clear the same way; a row with a square that came up too seldom has none.
 *
 * @param places for every row, how many columns lie at the left, or {@link
 *     SquareMap.Border#NO_LINE}
 * @param plusLeft whether plus is at the left
 */
public record Border(List<Integer> places, boolean plusLeft) {
  /** A row without a part in the border. */
  public static final int NO_LINE = SquareMap.Border.NO_LINE;

  /**
   * The places that the clear squares of a row leave open.
   *
   * @param low the first of them
   * @param high the last of them
   * @param told whether the row tells which it is, if there is one alone
   */
  private record Gap(int low, int high, boolean told) {
    static Gap of(List<Square> row, int left) {
      int low = 0;
      int high = row.size();
      for (int column = row.size() - 1; column >= 0; column--) {
        int sign = left * row.get(column).sign();
        low = sign > 0 ? Math.max(low, column + 1) : low;
        high = sign < 0 ? column : high;
      }
      boolean inside = low > 0 && high < row.size();
      boolean clear = row.stream().allMatch(square -> square.sign() != 0);
      boolean known = row.stream().allMatch(square -> square.estimate().isPresent());
      return new Gap(low, high, clear || (inside && known));
    }

    boolean pinned() {
      return told && low == high;
    }
  }

  /**
   * Looks for the border.
   *
   * @param squares row by row
   * @return the border; none where plus or minus is clear nowhere, no row leaves a single place, or
   *     a clear square would lie on the wrong side of any
   */
  static Optional<Border> of(List<List<Square>> squares) {
    boolean both = has(squares, 1) && has(squares, -1);
    if (!both) {
      return Optional.empty();
    }
    return of(squares, true).or(() -> of(squares, false));
  }

  private static boolean has(List<List<Square>> squares, int sign) {
    return squares.stream().flatMap(List::stream).anyMatch(square -> square.sign() == sign);
  }

  private static Optional<Border> of(List<List<Square>> squares, boolean plusLeft) {
    List<Gap> gaps = squares.stream().map(row -> Gap.of(row, plusLeft ? 1 : -1)).toList();
    boolean drawn = gaps.stream().anyMatch(Gap::pinned) && (falls(gaps) || rises(gaps));
    List<Integer> places = gaps.stream().map(gap -> gap.pinned() ? gap.low() : NO_LINE).toList();
    return drawn ? Optional.of(new Border(places, plusLeft)) : Optional.empty();
  }

  /** Whether some border moves left, or not at all, from each row to the next. */
  private static boolean falls(List<Gap> gaps) {
    int most = Integer.MAX_VALUE;
    for (Gap gap : gaps) {
      most = Math.min(most, gap.high());
      if (most < gap.low()) {
        return false;
      }
    }
    return true;
  }

  private static boolean rises(List<Gap> gaps) {
    List<Gap> upward = new ArrayList<>();
    gaps.forEach(gap -> upward.add(0, gap));
    return falls(upward);
  }
}
