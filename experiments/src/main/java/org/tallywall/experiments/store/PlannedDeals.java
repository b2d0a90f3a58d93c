package org.tallywall.experiments.store;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.reports.results.ResultNames;

/**
 * How many deals the study in a results folder asks for.
 *
 * @param planned the number that was fixed before the run began
 * @param deals the number now
 * @param changed whether it was changed after the run had begun, be it back to the first one
 */
public record PlannedDeals(long planned, long deals, boolean changed) {
  /**
   * Looks into a folder.
   *
   * @param target the results folder
   * @return empty where there is no run, or one whose number of deals is not fixed
   */
  public static Optional<PlannedDeals> in(Path target) {
    if (Manifest.read(target).isEmpty()) {
      return Optional.empty();
    }
    Map<?, ?> study = ManifestDifferences.read(target.resolve(ResultNames.STUDY));
    if (!(study.get("deals") instanceof Number deals)) {
      return Optional.empty();
    }
    boolean changed = study.get(StudyJson.FIRST_PLANNED) instanceof Number;
    long planned =
        changed ? ((Number) study.get(StudyJson.FIRST_PLANNED)).longValue() : deals.longValue();
    return Optional.of(new PlannedDeals(planned, deals.longValue(), changed));
  }
}
