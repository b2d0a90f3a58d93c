package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.experiments.error.FailedException;

/** A results folder that came from somebody else leads nobody out of it. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "links need a right of their own there")
class LinksInResultsTest {
  @TempDir Path folder;

  private Path results;
  private Path victim;

  @BeforeEach
  void plant() throws IOException {
    results = Files.createDirectory(folder.resolve("results"));
    victim = Files.writeString(folder.resolve("victim.txt"), "mine");
  }

  @Test
  void linkWhereAFileGrows_isNotWrittenThrough() throws IOException {
    Files.createSymbolicLink(results.resolve("notes.md.part"), victim);
    WholeFile.write(results.resolve("notes.md"), "new");
    assertThat(victim).hasContent("mine");
    assertThat(results.resolve("notes.md")).hasContent("new");
    assertThat(Files.isSymbolicLink(results.resolve("notes.md"))).isFalse();
  }

  @Test
  void linkInPlaceOfAPaper_isReplacedAndItsGoalKept() throws IOException {
    Files.createSymbolicLink(results.resolve("notes.md"), victim);
    PaperShelf.in(results).write("notes.md", "new");
    assertThat(victim).hasContent("mine");
    assertThat(Files.isSymbolicLink(results.resolve("notes.md"))).isFalse();
  }

  @Test
  void folderThatIsALink_isRefused() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Files.createSymbolicLink(results.resolve("charts"), elsewhere);
    Files.createSymbolicLink(results.resolve("blocks"), elsewhere);
    assertThatThrownBy(() -> WholeFile.folder(results.resolve("charts")))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("is a link to another place");
    assertThatThrownBy(() -> FreshFolder.make(results))
        .isInstanceOf(FailedException.class)
        .hasMessageContaining("is a link to another place");
    assertThat(elsewhere).isEmptyDirectory();
  }

  @Test
  void lock_followsNoLink() throws IOException {
    Path lock = Files.createDirectory(results.resolve("blocks")).resolve("lock");
    Files.createSymbolicLink(lock, folder.resolve("made"));
    assertThatThrownBy(() -> RunLock.take(lock)).isInstanceOf(IOException.class);
    assertThat(folder.resolve("made")).doesNotExist();
  }

  @Test
  void clearing_leavesWhatALinkLeadsTo() throws IOException {
    Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
    Path far = Files.writeString(elsewhere.resolve("far.csv"), "mine");
    Path drawn = Files.writeString(elsewhere.resolve("wins.svg"), "mine");
    Files.createSymbolicLink(results.resolve("lnk"), elsewhere);
    Files.createSymbolicLink(results.resolve("charts"), elsewhere);
    Files.createDirectory(results.resolve("blocks"));
    Files.writeString(results.resolve("wins.csv"), "old");
    Leftovers.clear(
        results,
        List.of("lnk/far.csv", "../victim.txt", "a\u0000b", "wins.csv", "", "/", "charts/wins.svg"),
        true);
    assertThat(far).hasContent("mine");
    assertThat(drawn).hasContent("mine");
    assertThat(victim).hasContent("mine");
    assertThat(results.resolve("wins.csv")).doesNotExist();
  }
}
