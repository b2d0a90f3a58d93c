package org.tallywall.experiments.design.branch;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The squares into which a study sorts positions: one for each combination of the values of its
 * features.
 *
 * @param values the values of each feature in the order written; those of the wall descend
 */
public record Cells(Map<Feature, List<Integer>> values) {
  /** No square. */
  public static final int NONE = -1;

  /**
   * Copies the values.
   *
   * @param values the values of each feature
   */
  public Cells {
    Map<Feature, List<Integer>> copy = new LinkedHashMap<>();
    values.forEach((feature, list) -> copy.put(feature, List.copyOf(list)));
    values = Collections.unmodifiableMap(copy);
  }

  /**
   * How many squares there are.
   *
   * @return 1 or more
   */
  public int count() {
    int count = 1;
    for (List<Integer> list : values.values()) {
      count *= list.size();
    }
    return count;
  }

  /**
   * The square of a position.
   *
   * @param position the value of each feature, in the order of {@link Feature}
   * @return its number from 0, or {@link #NONE}
   */
  public int of(int[] position) {
    int cell = 0;
    for (Map.Entry<Feature, List<Integer>> entry : values.entrySet()) {
      List<Integer> list = entry.getValue();
      int at = place(entry.getKey(), list, position[entry.getKey().ordinal()]);
      if (at < 0) {
        return NONE;
      }
      cell = cell * list.size() + at;
    }
    return cell;
  }

  private static int place(Feature feature, List<Integer> list, int value) {
    if (feature != Feature.WALL) {
      return list.indexOf(value);
    }
    int at = NONE;
    for (int edge = 0; edge < list.size() && value <= list.get(edge); edge++) {
      at = edge;
    }
    return at;
  }

  /**
   * The values that a square stands for.
   *
   * @param cell its number
   * @return one value for each feature, in the order written
   */
  public List<Integer> at(int cell) {
    List<List<Integer>> lists = new ArrayList<>(values.values());
    List<Integer> found = new ArrayList<>();
    int rest = cell;
    for (int at = lists.size() - 1; at >= 0; at--) {
      List<Integer> list = lists.get(at);
      found.add(0, list.get(rest % list.size()));
      rest /= list.size();
    }
    return found;
  }
}
