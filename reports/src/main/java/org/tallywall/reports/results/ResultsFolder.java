package org.tallywall.reports.results;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.tallywall.reports.schema.BranchColumns;
import org.tallywall.reports.table.CellText;
import org.tallywall.reports.table.Visible;

/**
 * Reads a results folder, whatever design it was played with: every file of numbers that is there,
 * by the names of its columns. A folder that is not what it should be is said for what it is.
 */
public final class ResultsFolder {
  private static final String ENDING = ".csv";

  /** Names as the program gives them; what a person puts beside them is left alone. */
  private static final Pattern OWN = Pattern.compile("[a-z0-9-]+\\.csv");

  private static final List<String> NEEDED = List.of("tallywall", "study", "card", "card-digest");

  private final Path folder;
  private final ThisProgram program;

  private ResultsFolder(Path folder, ThisProgram program) {
    this.folder = folder;
    this.program = program;
  }

  /**
   * Reads a folder.
   *
   * @param folder the folder
   * @param program the program that reads, for comparison with the one that wrote
   * @return what it holds
   * @throws WrongResultsException if there are no finished results in it, or they are damaged
   */
  public static Results read(Path folder, ThisProgram program) {
    return new ResultsFolder(folder, program).read();
  }

  private Results read() {
    check();
    Facts manifest = facts("manifest.json");
    FactCheck.manifest(folder.resolve("manifest.json"), manifest);
    for (String field : NEEDED) {
      if (manifest.text(field).isEmpty()) {
        throw new WrongResultsException(
            "\"%s\" has no field \"%s\"; without it nobody can tell where the numbers come from, so no report is made"
                .formatted(folder.resolve("manifest.json"), field));
      }
    }
    Facts study = facts("study.json");
    FactCheck.study(folder.resolve("study.json"), study);
    Optional<Provisional> provisional = Provisional.of(manifest, study);
    if (!Provisional.isComplete(manifest) && provisional.isEmpty()) {
      throw notComplete(manifest, study);
    }
    TreeMap<String, CsvFile> sheets = sheets();
    if (sheets.isEmpty()) {
      throw new WrongResultsException(
          "\"" + folder + "\" is damaged: it holds no file of numbers; play the study again");
    }
    situations(study, sheets);
    return new Results(
        folder, manifest, study, sheets, provisional, remarks(manifest, provisional));
  }

  /** A study of a choice is told by its situations: some must be there, for what it asks about. */
  private void situations(Facts study, TreeMap<String, CsvFile> sheets) {
    CsvFile sheet = sheets.get(BranchColumns.FILE);
    String primary = study.text("primary");
    boolean there =
        sheet == null
            || sheet.rows().stream()
                .anyMatch(
                    row -> primary.isEmpty() || row.text(BranchColumns.MEASURE).equals(primary));
    if (!there) {
      throw new WrongResultsException(
          "\"%s\" has no row%s%s"
              .formatted(
                  folder.resolve(ResultNames.table(BranchColumns.FILE)),
                  primary.isEmpty() ? "" : " of the measure \"" + Visible.inShort(primary) + "\"",
                  CsvFile.REMEDY));
    }
    if (sheet != null && study.object("branch").get("when") instanceof Map<?, ?> when) {
      when.keySet().forEach(condition -> sheet.rows().get(0).text(condition.toString()));
    }
  }

  private void check() {
    if (!Files.exists(folder)) {
      throw new WrongResultsException(
          "there is no folder \"" + folder + "\"; name a results folder, as in results/first-look");
    }
    if (!Files.isDirectory(folder)) {
      throw new WrongResultsException(
          "\"" + folder + "\" is a file; name the results folder in which it lies");
    }
    boolean study = Files.exists(folder.resolve("study.json"));
    boolean manifest = Files.exists(folder.resolve("manifest.json"));
    if (!manifest && (study || Files.exists(folder.resolve("blocks")))) {
      throw new WrongResultsException(
          "\""
              + folder
              + "\" holds a run that was not finished: it has no manifest.json yet; let it go on,"
              + " and ask for the report when it is done");
    }
    if (!manifest) {
      throw new WrongResultsException(
          "\"" + folder + "\" holds no results: there is neither manifest.json nor study.json");
    }
    if (!study) {
      throw new WrongResultsException(
          "\"" + folder + "\" is damaged: study.json is missing; play the study again");
    }
  }

  private Facts facts(String name) {
    return SmallJson.read(folder.resolve(name));
  }

  private TreeMap<String, CsvFile> sheets() {
    TreeMap<String, CsvFile> sheets = new TreeMap<>();
    List<Path> files;
    try (Stream<Path> inside = Files.list(folder)) {
      files = inside.filter(file -> OWN.matcher(file.getFileName().toString()).matches()).toList();
    } catch (IOException e) {
      throw new WrongResultsException("\"" + folder + "\" cannot be looked into");
    }
    for (Path file : files) {
      String ended = file.getFileName().toString();
      String name = ended.substring(0, ended.length() - ENDING.length());
      sheets.put(name, CsvFileReader.read(file, name));
    }
    return sheets;
  }

  /** A run that goes on or was stopped has played deals and written no figures yet. */
  private WrongResultsException notComplete(Facts manifest, Facts study) {
    OptionalLong wanted = study.whole("deals");
    String far =
        "stopped".equals(manifest.text("state"))
            ? grouped(manifest.whole("deals").orElse(0))
                + (wanted.isPresent() ? " of " + grouped(wanted.getAsLong()) : "")
                + " deals"
            : "it is going on, or was cut off";
    return new WrongResultsException(
        "\"%s\" holds a run that is not complete (%s); go on with it by --on-existing resume; or see what it shows so far with: tallywall report %s"
            .formatted(folder, far, folder));
  }

  private List<String> remarks(Facts manifest, Optional<Provisional> provisional) {
    List<String> remarks = new ArrayList<>();
    String written = manifest.text("tallywall");
    if (!written.equals(program.version())) {
      remarks.add(
          "These results were written by version %s of the program; this report was made by version %s. Numbers that it does not know are left out."
              .formatted(written, program.version()));
    }
    OptionalLong streams = manifest.whole("stream-version");
    if (streams.isPresent() && streams.getAsLong() != program.streams()) {
      remarks.add(
          "They were played with random streams of version %s; this program has version %s, so the same study gives other games now."
              .formatted(streams.getAsLong(), program.streams()));
    }
    for (Object file : manifest.list("files")) {
      if (file instanceof String name && isMissing(name)) {
        remarks.add(
            "The file %s, which this run wrote, is missing here; what it held is left out."
                .formatted(name));
      }
    }
    long faults = provisional.map(Provisional::faults).orElse(manifest.whole("faults").orElse(0));
    if (faults > 0) {
      remarks.add(
          grouped(faults)
              + (faults == 1 ? " deal was" : " deals were")
              + " set aside, because a player crashed or gave an illegal answer; none of their games"
              + " count.");
    }
    return remarks;
  }

  private boolean isMissing(String name) {
    return OWN.matcher(name).matches() && !Files.exists(folder.resolve(name));
  }

  private static String grouped(long number) {
    return CellText.grouped(Long.toString(number));
  }
}
