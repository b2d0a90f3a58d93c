package org.tallywall.core.text;

import java.util.ArrayList;
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
    super(told(faults).stream().map(fault -> fault.text(file)).collect(Collectors.joining("\n")));
    this.faults = told(faults);
  }

  /**
   * A file that is at fault as a whole.
   *
   * @param file its name as the user wrote it
   * @param fault what is wrong and what to do instead
   */
  public FaultyFileException(String file, String fault) {
    this(file, List.of(new Fault(0, 0, "", fault)));
  }

  /** Faults collected in another way than by {@link Faults} may be too many to tell. */
  private static List<Fault> told(List<Fault> faults) {
    int most = FileLimits.MOST_FAULTS + 1;
    if (faults.size() <= most) {
      return List.copyOf(faults);
    }
    List<Fault> told = new ArrayList<>(faults.subList(0, FileLimits.MOST_FAULTS));
    told.add(TopFaults.more(faults.size() - FileLimits.MOST_FAULTS, "faults"));
    return List.copyOf(told);
  }

  /**
   * What is wrong.
   *
   * @return the faults, at least one; of very many the first, and how many more there are
   */
  public List<Fault> faults() {
    return faults;
  }
}
