package org.tallywall.core.text;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The faults and warnings of one file, collected while it is read. However many there are, {@link
 * FileLimits#MOST_FAULTS} of each are kept, the topmost.
 */
public final class Faults {
  private final TopFaults faults = new TopFaults("faults");
  private final TopFaults warnings = new TopFaults("warnings");
  private final Set<Place> unreadable = new LinkedHashSet<>();
  private int findings;

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
    findings++;
    if (unreadable.contains(at)) {
      return;
    }
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
   * Notes a value that could not be read. Something stands in for it from then on; whatever is said
   * of that at the same place is not noted.
   *
   * @param at the place
   * @param message what is wrong and what to write instead
   */
  void unreadable(Place at, String message) {
    fault(at, message);
    unreadable.add(at);
  }

  /** Something is wrong, and the fault noted for it before says enough. */
  void saidEnough() {
    findings++;
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
    return faults.count() > 0;
  }

  /**
   * How many faults there are.
   *
   * @return 0 or more, also those that are not kept; warnings do not count
   */
  public int count() {
    return faults.count();
  }

  /**
   * How often something was found wrong, also where the fault noted before at the same place says
   * enough. Whoever reads a part compares it before and after: the part is good where it is the
   * same.
   *
   * @return 0 or more
   */
  public int findings() {
    return findings;
  }

  /**
   * Whether so many faults were noted that further ones need no advice that takes time.
   *
   * @return true with ten times as many as are told
   */
  public boolean enough() {
    return count() >= 10 * FileLimits.MOST_FAULTS;
  }

  /**
   * What to write in place of a word that is not known.
   *
   * @param word the word
   * @param known those that would be right; not empty
   * @return the nearest and all of them, to follow what is wrong; empty where there are {@link
   *     #enough} faults
   */
  public String advice(String word, List<String> known) {
    return enough() ? "" : Nearest.advice(word, known);
  }

  /**
   * The known word that an unknown one most likely means.
   *
   * @param word the word
   * @param known those that would be right
   * @return the nearest; nothing where none is near, or there are {@link #enough} faults
   */
  public Optional<String> meant(String word, List<String> known) {
    return enough() ? Optional.empty() : Nearest.of(word, known);
  }

  /**
   * The faults from top to bottom; where there are too many, the last says how many were left out.
   *
   * @return an unmodifiable list
   */
  public List<Fault> faults() {
    return faults.list();
  }

  /**
   * The warnings from top to bottom; where there are too many, the last says how many were left
   * out.
   *
   * @return an unmodifiable list
   */
  public List<Fault> warnings() {
    return warnings.list();
  }
}
