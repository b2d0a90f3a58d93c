package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.experiments.store.OnExisting;

/** Machines that write numbers with other digits give the same bytes and say the same words. */
class LocaleTest {
  private static final String STUDY =
      """
      { "study": "look", "card": "small.json", "seed": 5, "deals": 30, "records": 2,
        "failed-deals-allowed": 29, "table": ["clumsy", "nearest", "nearest", "nearest"] }
      """;

  @TempDir Path folder;

  private final Locale usual = Locale.getDefault();

  @BeforeEach
  void write() {
    Cards.small(folder);
    Cards.write(folder, "clumsy.json", STUDY);
    Cards.write(folder, "look.json", STUDY.replace("clumsy", "nearest"));
  }

  @AfterEach
  void restore() {
    Locale.setDefault(usual);
  }

  private String path(String name) {
    return folder.resolve(name).toString();
  }

  private Map<String, String> played(String out) throws IOException {
    Typed run = Typed.run("run", path("look.json"), "--out", path(out));
    assertThat(run.code()).isZero();
    Map<String, String> files = RunCommandTest.files(folder.resolve(out));
    files.remove("manifest.json");
    return files;
  }

  @Test
  void run_givesTheSameBytesInEveryLocale() throws IOException {
    Map<String, String> here = played("here");
    for (String tag : List.of("ar-EG-u-nu-arab", "my-MM-u-nu-mymr", "tr-TR")) {
      Locale.setDefault(Locale.forLanguageTag(tag));
      Map<String, String> there = played("in " + tag);
      assertThat(there.keySet()).as(tag).isEqualTo(here.keySet());
      assertThat(there).as(tag).isEqualTo(here);
    }
    assertThat(Typed.run("verify", path("here")).out()).contains("1 of 1 block played again");
  }

  /** An illegal answer's words stand in the stored blocks. */
  @Test
  void faults_areTheSameBytesInEveryLocale() throws IOException {
    clumsy("here");
    Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
    clumsy("there");
    Map<String, String> here = RunCommandTest.files(folder.resolve("here"));
    Map<String, String> there = RunCommandTest.files(folder.resolve("there"));
    assertThat(here.get("faults.csv")).contains("exposure 77 of seat 9");
    assertThat(there.get("faults.csv")).isEqualTo(here.get("faults.csv"));
    assertThat(folder.resolve("there/blocks/0000000.block"))
        .hasSameBinaryContentAs(folder.resolve("here/blocks/0000000.block"));
  }

  private void clumsy(String out) {
    Clumsy.Run run =
        Clumsy.run(
            path("clumsy.json"),
            path(out),
            view -> view.held(35) > 1 ? new TurnChoice.Exchange(9, 77) : null,
            OnExisting.FAIL);
    assertThat(run.code()).as(run.said()).isZero();
  }

  @Test
  void console_saysTheSameWordsInEveryLocale() {
    String[][] commands = {
      {
        "game",
        "--card",
        path("small.json"),
        "--seed",
        "3",
        "--deal",
        "12",
        "--players",
        "nearest,nearest,nearest,nearest",
        "--reasons"
      },
      {"rack", path("small.json"), "2222b 33c 444b 555d 6c"},
      {"card", "check", path("small.json")},
      {"card", "read", path("small.json")},
      {"players", "watchful"},
      {"run", path("look.json"), "--deals", "0"},
    };
    for (String[] command : commands) {
      Locale.setDefault(usual);
      Typed here = Typed.run(command);
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(Typed.run(command)).isEqualTo(here);
    }
  }
}
