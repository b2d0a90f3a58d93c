package org.tallywall.core.text;

import java.util.ArrayList;
import java.util.List;

/** The topmost faults of a file; the others are counted only, for nobody reads a million. */
final class TopFaults {
  private static final int ROOM = 4 * FileLimits.MOST_FAULTS;

  private final String others;
  private final List<Fault> kept = new ArrayList<>();
  private int count;

  /**
   * No fault yet.
   *
   * @param others what to call those that are only counted, as in "faults"
   */
  TopFaults(String others) {
    this.others = others;
  }

  void add(Fault fault) {
    count++;
    kept.add(fault);
    if (kept.size() == ROOM) {
      sort();
      kept.subList(FileLimits.MOST_FAULTS, ROOM).clear();
    }
  }

  int count() {
    return count;
  }

  /** From top to bottom; where some are left out, the last one says how many. */
  List<Fault> list() {
    sort();
    if (count <= FileLimits.MOST_FAULTS) {
      return List.copyOf(kept);
    }
    List<Fault> told = new ArrayList<>(kept.subList(0, FileLimits.MOST_FAULTS));
    told.add(more(count - FileLimits.MOST_FAULTS, others));
    return List.copyOf(told);
  }

  private void sort() {
    kept.sort(Fault.ORDER);
  }

  /** What stands in place of those that are left out. */
  static Fault more(int number, String others) {
    String first = "; only the first " + FileLimits.MOST_FAULTS + " are listed";
    return new Fault(0, 0, "", "and " + number + " more " + others + first);
  }
}
