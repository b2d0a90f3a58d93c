package org.tallywall.experiments.tally;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Describes which numbers a tally carries and in which order. Bytes that were written in one order
 * say nothing to a tally that reads in another, so the description goes with them.
 */
public final class TallyLayout implements Carrier {
  private static final String NUMBER = "number";

  private final StringBuilder lines = new StringBuilder();
  private final List<String> carried = new ArrayList<>();

  private TallyLayout() {}

  /**
   * Describes a tally.
   *
   * @param tally the tally; it is not changed
   * @return lines, each ended by {@code \n}: the parts, and in each what is carried how many times
   *     in a row
   */
  public static String of(StudyTally tally) {
    TallyLayout layout = new TallyLayout();
    tally.carry(layout);
    layout.end();
    return layout.lines.toString();
  }

  @Override
  public long carry(long number) {
    carried.add(NUMBER);
    return number;
  }

  @Override
  public void carry(long[] numbers) {
    carried.add("array of " + numbers.length);
  }

  @Override
  public void carry(Class<? extends Enum<?>> names, long[] counts) {
    carried.add(
        Arrays.stream(names.getEnumConstants())
            .map(Enum::name)
            .collect(Collectors.joining(" ", "counts ", "")));
  }

  /** A number with digits of its own is a sum of any size. */
  @Override
  public int carryLength(int length) {
    carried.set(carried.size() - 1, "sum");
    return length;
  }

  @Override
  public void part(String name) {
    end();
    lines.append(name).append('\n');
  }

  private void end() {
    int at = 0;
    while (at < carried.size()) {
      String what = carried.get(at);
      int times = 0;
      while (at < carried.size() && carried.get(at).equals(what)) {
        times++;
        at++;
      }
      lines.append("  ").append(times).append(" x ").append(what).append('\n');
    }
    carried.clear();
  }
}
