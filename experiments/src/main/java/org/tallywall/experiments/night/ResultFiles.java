package org.tallywall.experiments.night;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.store.WholeFile.Filler;
import org.tallywall.reports.csv.CsvWriter;
import org.tallywall.reports.markdown.ColumnsPage;
import org.tallywall.reports.results.ResultNames;
import org.tallywall.reports.table.Table;

/** What a results folder holds when a run is complete, beside the study and the manifest. */
final class ResultFiles {
  private ResultFiles() {}

  /**
   * The files.
   *
   * @param merged all blocks
   * @param words describes faults
   * @param records where the records have grown; null where none were kept
   */
  static Map<String, Filler> of(Merger merged, FaultWords words, Path records) {
    List<Table> tables = new ArrayList<>(merged.tables());
    List<SpoiledDeal> faults = merged.faults();
    if (!faults.isEmpty()) {
      tables.add(words.table(faults));
    }
    Map<String, Filler> files = new LinkedHashMap<>();
    for (Table table : tables) {
      files.put(ResultNames.table(table.stem()), part -> CsvWriter.write(table, part));
    }
    files.put(ResultNames.COLUMNS, part -> Files.write(part, bytes(ColumnsPage.text(tables))));
    if (records != null) {
      files.put(
          ResultNames.RECORDS,
          part -> Files.move(records, part, StandardCopyOption.REPLACE_EXISTING));
    }
    return files;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
