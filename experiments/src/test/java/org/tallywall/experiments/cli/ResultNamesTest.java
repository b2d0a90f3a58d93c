package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.reports.results.ResultNames;

/** Whatever a run and its papers put into the results folder has its name from one class. */
class ResultNamesTest {
  @TempDir Path folder;

  @Test
  void aCompleteRun_holdsFilesOfKnownNamesAlone() throws IOException {
    Cards.small(folder);
    Path study =
        Files.writeString(
            folder.resolve("s.json"),
            """
            { "study": "s", "card": "small.json", "seed": 5, "deals": 8, "records": 2,
              "table": ["nearest", "nearest", "nearest", "nearest"] }
            """);
    Path out = folder.resolve("out");

    assertThat(Typed.run("run", study.toString(), "--out", out.toString()).code()).isZero();

    assertThat(names(out).filter(name -> !name.endsWith(ResultNames.TABLE_ENDING)))
        .containsExactlyInAnyOrder(
            ResultNames.STUDY,
            ResultNames.MANIFEST,
            ResultNames.BLOCKS,
            ResultNames.RECORDS,
            ResultNames.COLUMNS,
            ResultNames.REPORT,
            ResultNames.NOTES,
            ResultNames.NOTES_PAGE,
            ResultNames.CHARTS,
            ResultNames.GAMES);
    assertThat(names(out.resolve(ResultNames.BLOCKS))).contains(ResultNames.LOCK);
  }

  private static Stream<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      Set<String> names =
          files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
      return names.stream();
    }
  }
}
