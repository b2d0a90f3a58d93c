package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;

/** Results appear whole under their name, or not at all. */
class RunFolderTest {
  @TempDir Path folder;

  private void fill(RunFolder results, String text) throws IOException {
    Files.writeString(results.file("study.json"), text);
    Files.writeString(results.file("manifest.json"), text);
  }

  private List<String> inside() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void complete_newFolder_appearsAtTheEndOnly() throws IOException {
    Path target = folder.resolve("deep/er/look");
    try (RunFolder results = RunFolder.begin(target, OnExisting.FAIL)) {
      fill(results, "new");
      assertThat(target).doesNotExist();
      results.complete();
    }

    assertThat(target.resolve("study.json")).hasContent("new");
    try (Stream<Path> files = Files.list(target.getParent())) {
      assertThat(files).containsExactly(target);
    }
  }

  @Test
  void close_notComplete_leavesNothingBehind() throws IOException {
    Path target = folder.resolve("results/look");
    try (RunFolder results = RunFolder.begin(target, OnExisting.FAIL)) {
      fill(results, "half");
    }

    assertThat(inside()).isEmpty();
  }

  @Test
  void begin_emptyFolder_countsAsNew() throws IOException {
    Path target = Files.createDirectory(folder.resolve("look"));
    try (RunFolder results = RunFolder.begin(target, OnExisting.FAIL)) {
      fill(results, "new");
      results.complete();
    }

    assertThat(inside()).containsExactly("look");
    assertThat(target.resolve("study.json")).hasContent("new");
  }

  @Test
  void begin_resultsThere_areRefusedOrReplacedWhenComplete() throws IOException {
    Path target = folder.resolve("look");
    for (String text : List.of("old", "new")) {
      try (RunFolder results = RunFolder.begin(target, OnExisting.OVERWRITE)) {
        fill(results, text);
        if (text.equals("new")) {
          assertThat(target.resolve("study.json")).hasContent("old");
        }
        results.complete();
      }
    }

    assertThat(target.resolve("study.json")).hasContent("new");
    assertThat(inside()).containsExactly("look");
    assertThatThrownBy(() -> RunFolder.begin(target, OnExisting.FAIL))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is there already")
        .hasMessageContaining("--on-existing overwrite");
  }

  @Test
  void begin_folderOfSomethingElse_isNeverReplaced() throws IOException {
    Path target = Files.createDirectory(folder.resolve("letters"));
    Files.writeString(target.resolve("to-mother.txt"), "Dear");

    assertThatThrownBy(() -> RunFolder.begin(target, OnExisting.OVERWRITE))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("holds no results of a run");
    assertThatThrownBy(() -> RunFolder.begin(target.resolve("to-mother.txt"), OnExisting.OVERWRITE))
        .isInstanceOf(WrongInputException.class)
        .hasMessageContaining("is a file");
    assertThatThrownBy(() -> RunFolder.begin(target.resolve("to-mother.txt/look"), OnExisting.FAIL))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("could not be written");
  }

  @Test
  void file_thatCannotBeFilled_leavesTheOlderOne() throws IOException {
    Path file = Files.writeString(folder.resolve("card.json"), "old");

    assertThatThrownBy(
            () ->
                WholeFile.grow(
                    file,
                    part -> {
                      Files.writeString(part, "ha");
                      throw new IOException("No space left on device");
                    }))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("card.json")
        .hasMessageContaining("No space left on device");
    assertThat(file).hasContent("old");
    assertThat(inside()).containsExactly("card.json");
  }

  @Test
  void records_fullDisk_areReported() {
    Path full = Path.of("/dev/full");
    Assumptions.assumeTrue(Files.exists(full), "a device that is always full");

    assertThatThrownBy(() -> RecordWriter.write(full, false, List.of("{}")))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("could not be written");
  }
}
