package org.tallywall.reports.results;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a results folder holds.
 *
 * @param folder the folder
 * @param manifest where the results came from
 * @param study the study with every default
 * @param sheets the files of numbers, by their name without the ending
 * @param provisional how far the run is; empty where it is complete
 * @param remarks what a reader has to know first: one sentence each, such as that another version
 *     played it; empty for a run of this version
 */
public record Results(
    Path folder,
    Facts manifest,
    Facts study,
    Map<String, CsvFile> sheets,
    Optional<Provisional> provisional,
    List<String> remarks) {
  /**
   * Copies the collections.
   *
   * @param folder the folder
   * @param manifest where the results came from
   * @param study the study
   * @param sheets the files of numbers
   * @param provisional how far an unfinished run is
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
   * How many deals the figures count.
   *
   * @return at least 0
   */
  public long deals() {
    return provisional.map(Provisional::deals).orElse(manifest.whole("deals").orElse(0));
  }

  /**
   * How many games the figures count.
   *
   * @return at least 0; empty where the manifest does not say
   */
  public OptionalLong games() {
    return provisional.map(Provisional::games).orElse(manifest.whole("games"));
  }
}
