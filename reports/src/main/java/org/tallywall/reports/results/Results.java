package org.tallywall.reports.results;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a results folder holds.
 *
 * @param folder the folder
 * @param manifest where the results came from
 * @param study the study with every default
 * @param sheets the files of numbers, by their name without the ending
 * @param remarks what a reader has to know first: one sentence each, such as that the run is not
 *     finished; empty for a finished run of this version
 */
public record Results(
    Path folder, Facts manifest, Facts study, Map<String, CsvFile> sheets, List<String> remarks) {
  /**
   * Copies the collections.
   *
   * @param folder the folder
   * @param manifest where the results came from
   * @param study the study
   * @param sheets the files of numbers
   * @param remarks what a reader has to know first
   */
  public Results {
    sheets = Map.copyOf(sheets);
    remarks = List.copyOf(remarks);
  }

  /**
   * A file of numbers.
   *
   * @param name its name without the ending
   * @return the file, if the folder has it
   */
  public Optional<CsvFile> sheet(String name) {
    return Optional.ofNullable(sheets.get(name));
  }

  /**
   * The rows of a file of numbers.
   *
   * @param name its name without the ending
   * @return its rows; none if the folder does not have it
   */
  public List<CsvFile.Row> rows(String name) {
    return sheet(name).map(CsvFile::rows).orElse(List.of());
  }

  /**
   * The study's name.
   *
   * @return as the study says
   */
  public String name() {
    return manifest.text("study");
  }

  /**
   * The study's question, or its name where it asks none.
   *
   * @return one line
   */
  public String question() {
    String words = study.text("question");
    return words.isBlank() ? name() : words;
  }

  /**
   * The level of all intervals.
   *
   * @return between 0 and 1
   */
  public double confidence() {
    return study.number("confidence").map(Number::doubleValue).orElse(0.95);
  }

  /**
   * How many deals were played.
   *
   * @return at least 0
   */
  public long deals() {
    return manifest.whole("deals").orElse(0);
  }
}
