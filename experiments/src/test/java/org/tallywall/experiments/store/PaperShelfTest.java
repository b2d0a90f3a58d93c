package org.tallywall.experiments.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers are written anew, but never over what somebody has worked on. */
class PaperShelfTest {
  @TempDir Path results;

  @BeforeEach
  void manifest() throws IOException {
    Files.writeString(results.resolve("manifest.json"), "{\"state\": \"complete\"}");
  }

  private List<String> write(String text) {
    PaperShelf shelf = PaperShelf.in(results);
    shelf.write("notes.md", text);
    return shelf.kept();
  }

  @Test
  void paper_asItWasWritten_isReplaced() {
    assertThat(write("one")).isEmpty();
    assertThat(write("two")).isEmpty();
    assertThat(results.resolve("notes.md")).hasContent("two");
    assertThat(results.resolve("notes.edited-1.md")).doesNotExist();
  }

  @Test
  void paper_thatSomebodyChanged_isKeptUnderAnotherName() throws IOException {
    write("one");
    Files.writeString(results.resolve("notes.md"), "one, and my own words");
    assertThat(write("two"))
        .containsExactly(
            "\"notes.md\" was changed after it had been made; your version is now"
                + " \"notes.edited-1.md\"");
    assertThat(results.resolve("notes.md")).hasContent("two");
    assertThat(results.resolve("notes.edited-1.md")).hasContent("one, and my own words");
    Files.writeString(results.resolve("notes.md"), "again");
    assertThat(write("three")).hasSize(1);
    assertThat(results.resolve("notes.edited-2.md")).hasContent("again");
    assertThat(results.resolve("notes.edited-1.md")).hasContent("one, and my own words");
  }

  /** Papers were written and the machine went down before the manifest knew of them. */
  @Test
  void paper_thatIsAlreadyWhatIsToBeWritten_isNobodysWork() throws IOException {
    Files.writeString(results.resolve("notes.md"), "one");
    assertThat(write("one")).isEmpty();
    assertThat(results.resolve("notes.edited-1.md")).doesNotExist();
  }

  @Test
  void clearing_takesPapersAwayAndKeepsWhatSomebodyChanged() throws IOException {
    write("one");
    PaperShelf shelf = PaperShelf.in(results);
    shelf.write("report.html", "page");
    Files.writeString(results.resolve("notes.md"), "mine");
    PaperShelf other = PaperShelf.in(results);
    other.clear();
    assertThat(other.kept()).hasSize(1);
    assertThat(results.resolve("report.html")).doesNotExist();
    assertThat(results.resolve("notes.md")).doesNotExist();
    assertThat(results.resolve("notes.edited-1.md")).hasContent("mine");
  }

  /** A folder that an earlier build filled, or whose manifest was lost. */
  @Test
  void paper_ofWhichNothingIsKnown_isKeptAndNotSaidToBeChanged() throws IOException {
    Files.writeString(results.resolve("notes.md"), "whose?");
    assertThat(write("one"))
        .containsExactly(
            "\"notes.md\" was there before, and it cannot be told whether you changed it; it is now"
                + " \"notes.edited-1.md\"");
    assertThat(results.resolve("notes.edited-1.md")).hasContent("whose?");
  }

  /** The machine may go down at any paper: those written before are the program's own. */
  @Test
  void papers_areKnownOneByOne() {
    PaperShelf.in(results).write("notes.md", "one");
    assertThat(write("two")).isEmpty();
    assertThat(results.resolve("notes.edited-1.md")).doesNotExist();
  }

  @Test
  void clearing_keepsChangedChartsAndFilesOfOnesOwn() throws IOException {
    PaperShelf shelf = PaperShelf.in(results);
    shelf.write("charts/wins.svg", "drawn");
    shelf.write("charts/aims.svg", "drawn");
    shelf.write("games/game-3.html", "page");
    Files.createDirectory(results.resolve("blocks"));
    Files.writeString(results.resolve("charts/aims.svg"), "mine");
    Files.writeString(results.resolve("games/game-3.html"), "mine, too");
    Files.writeString(results.resolve("charts/own.svg"), "drawn by hand");
    assertThat(Leftovers.clear(results, List.of(), true)).hasSize(2);
    assertThat(results.resolve("charts/wins.svg")).doesNotExist();
    assertThat(results.resolve("charts/aims.edited-1.svg")).hasContent("mine");
    assertThat(results.resolve("games/game-3.edited-1.html")).hasContent("mine, too");
    assertThat(results.resolve("charts/own.svg")).hasContent("drawn by hand");
  }
}
