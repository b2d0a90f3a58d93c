package org.tallywall.reports.results;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * How far a run is whose figures were written before it was complete.
 *
 * @param deals the deals that the figures count, at least 1
 * @param games the games that they count; empty where the manifest does not say
 * @param faults the deals that were set aside among them
 * @param wanted the deals that the study asks for; empty where it does not say
 * @param atMost whether the study may stop before it has played all of these
 */
public record Provisional(
    long deals, OptionalLong games, long faults, OptionalLong wanted, boolean atMost) {
  /** The field of a manifest that says what the figures of an unfinished run count. */
  public static final String FIELD = "provisional";

  /**
   * What a manifest and a study say of it.
   *
   * @return empty where the run is complete, or where no figures of an unfinished run were written
   */
  static Optional<Provisional> of(Facts manifest, Facts study) {
    Facts counted = Facts.of(manifest.object(FIELD));
    OptionalLong deals = counted.whole("deals");
    if (!isComplete(manifest) && deals.isPresent()) {
      return Optional.of(
          wanted(
              deals.getAsLong(), counted.whole("games"), counted.whole("faults").orElse(0), study));
    }
    OptionalLong done = manifest.whole("deals");
    OptionalLong wanted = study.whole("deals");
    long faults = manifest.whole("faults").orElse(0);
    boolean early =
        done.isPresent() && wanted.isPresent() && done.getAsLong() + faults < wanted.getAsLong();
    return isComplete(manifest) && early
        ? Optional.of(wanted(done.getAsLong(), manifest.whole("games"), faults, study))
        : Optional.empty();
  }

  private static Provisional wanted(long deals, OptionalLong games, long faults, Facts study) {
    OptionalLong fixed = study.whole("deals");
    Map<String, Object> until = study.object("until");
    boolean atMost = fixed.isEmpty() && !until.isEmpty();
    return new Provisional(
        deals, games, faults, atMost ? Facts.of(until).whole("at-most") : fixed, atMost);
  }

  /** Whether a manifest says that its run has come to its end; an old one says nothing. */
  static boolean isComplete(Facts manifest) {
    String state = manifest.text("state");
    return state.isEmpty() || state.equals("complete");
  }
}
