package org.tallywall.core.text;

import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be used, with all its faults; the message names each on a line of its own. */
public final class FaultyFileException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * A file with faults.
   *
   * @param file its name as the user wrote it
   * @param faults at least one fault
   */
  public FaultyFileException(String file, List<Fault> faults) {
    super(faults.stream().map(fault -> fault.text(file)).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /**
   * What is wrong.
   *
   * @return the faults, at least one
   */
  public List<Fault> faults() {
    return faults;
  }
}
