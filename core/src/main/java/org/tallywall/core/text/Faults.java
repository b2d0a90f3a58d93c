package org.tallywall.core.text;

import java.util.ArrayList;
import java.util.List;

/** The faults and warnings of one file, collected while it is read. */
public final class Faults {
  private final List<Fault> faults = new ArrayList<>();
  private final List<Fault> warnings = new ArrayList<>();

  /** No fault yet. */
  public Faults() {}

  /**
   * Notes a fault.
   *
   * @param at the place
   * @param id the id of the card's line concerned, or empty
   * @param message what is wrong and what to write instead
   */
  public void fault(Place at, String id, String message) {
    faults.add(new Fault(at.line(), at.column(), id, message));
  }

  /**
   * Notes a fault without a line id.
   *
   * @param at the place
   * @param message what is wrong and what to write instead
   */
  public void fault(Place at, String message) {
    fault(at, "", message);
  }

  /**
   * Notes a warning.
   *
   * @param at the place
   * @param id the id of the card's line concerned, or empty
   * @param message what looks odd
   */
  public void warn(Place at, String id, String message) {
    warnings.add(new Fault(at.line(), at.column(), id, message));
  }

  /**
   * Whether a fault was noted.
   *
   * @return true with one fault or more; warnings do not count
   */
  public boolean any() {
    return !faults.isEmpty();
  }

  /**
   * How many faults there are.
   *
   * @return 0 or more; warnings do not count
   */
  public int count() {
    return faults.size();
  }

  /**
   * The faults from top to bottom.
   *
   * @return an unmodifiable list
   */
  public List<Fault> faults() {
    return faults.stream().sorted(Fault.ORDER).toList();
  }

  /**
   * The warnings from top to bottom.
   *
   * @return an unmodifiable list
   */
  public List<Fault> warnings() {
    return warnings.stream().sorted(Fault.ORDER).toList();
  }
}
