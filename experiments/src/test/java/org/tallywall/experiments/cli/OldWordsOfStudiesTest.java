package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words that studies had are understood, and said once. */
class OldWordsOfStudiesTest {
  private static final String STUDY =
      """
      { "study": "harbor-look", "card": "small.json", "seed": 5, "deals": 20,
        "failed-deals-allowed": 2,
        "table": ["nearest", "nearest",
          { "player": "reckoner", "defense": { "last-wall": 9 } },
          { "player": "reckoner", "defense.hold-back": true } ] }
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() {
    Cards.small(folder);
  }

  @Test
  void run_aStudyInOldWords_warnsOnceAndPlaysTheSame() throws IOException {
    Typed today = run("today", STUDY);
    Typed old =
        run(
            "old",
            STUDY.replace("defense", "defence").replace("failed-deals-allowed", "faults-borne"));

    assertThat(today.err()).isEmpty();
    assertThat(old.err().lines())
        .containsExactly(
            "warning: "
                + folder.resolve("old.json")
                + ":2:3: \"faults-borne\" is written"
                + " \"failed-deals-allowed\" today",
            "warning: "
                + folder.resolve("old.json")
                + ":4:29: \"defence\" is written \"defense\""
                + " today");
    for (String file : new String[] {"study.json", "win-rates.csv", "hand-choice.csv"}) {
      assertThat(Files.readString(folder.resolve("old").resolve(file)))
          .isEqualTo(Files.readString(folder.resolve("today").resolve(file)));
    }
  }

  private Typed run(String name, String study) {
    String file = Cards.write(folder, name + ".json", study);
    Typed typed =
        Typed.run("run", file, "--out", folder.resolve(name).toString(), "--without-report");
    assertThat(typed.code()).isZero();
    return typed;
  }
}
