package org.tallywall.reports.words;

import org.tallywall.reports.results.Results;
import org.tallywall.reports.schema.FamilyColumns;
import org.tallywall.reports.schema.Show;

/** What a study of one fixed table is asked about. */
public final class Shown {
  private Shown() {}

  /**
   * What the study says; one of an earlier build, which says nothing, is asked the usual.
   *
   * @param results what a results folder holds
   * @return what headline, first table and first chart are about
   */
  public static Show of(Results results) {
    return Show.of(results.study().text(Show.FIELD))
        .orElseGet(() -> Show.usual(results.rows(FamilyColumns.FILE).size()));
  }
}
