package org.tallywall.experiments.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards and studies of the program are found from its own place, however it was started. */
class ReadyFilesTest {
  @TempDir Path folder;

  private Path program() throws IOException {
    Path jar = folder.resolve("lib/tallywall.jar");
    for (String name : new String[] {"cards/saltmarsh-quay.json", "studies/first-look.json"}) {
      Files.createDirectories(folder.resolve(name).getParent());
      Files.writeString(folder.resolve(name), "{}");
    }
    Files.createDirectories(jar.getParent());
    return Files.writeString(jar, "");
  }

  @Test
  void files_belowTheFolderOfTheCommand_haveAShortWay() throws IOException {
    ReadyFiles ready = ReadyFiles.above(program(), folder.getParent()).orElseThrow();

    Path home = folder.getFileName();
    assertThat(ready.demoCard()).isEqualTo(home.resolve("cards/saltmarsh-quay.json"));
    assertThat(ready.studies()).containsExactly(home.resolve("studies/first-look.json"));
  }

  @Test
  void files_elsewhere_haveTheWholeWay() throws IOException {
    ReadyFiles ready = ReadyFiles.above(program(), folder.resolve("lib")).orElseThrow();

    assertThat(ready.firstStudy()).isEqualTo(folder.resolve("studies/first-look.json"));
  }

  @Test
  void cards_ofTheProgram_areToldFromOthers() throws IOException {
    ReadyFiles ready = ReadyFiles.above(program(), folder).orElseThrow();
    Path own = Files.writeString(folder.resolve("saltmarsh-quay.json"), "{}");

    assertThat(ready.holdsCard(folder.resolve("studies/../cards/saltmarsh-quay.json"))).isTrue();
    assertThat(ready.holdsCard(own)).isFalse();
    assertThat(ready.holdsCard(folder.resolve("cards/none.json"))).isFalse();
  }

  @Test
  void files_takenAway_areNotFound() throws IOException {
    Path jar = program();
    Files.delete(folder.resolve("cards/saltmarsh-quay.json"));

    assertThat(ReadyFiles.above(jar, folder)).isEmpty();
  }

  @Test
  void files_ofTheseTests_areThoseOfTheProject() {
    assertThat(ReadyFiles.find().orElseThrow().demoCard())
        .isEqualTo(Path.of("cards/saltmarsh-quay.json"));
  }
}
