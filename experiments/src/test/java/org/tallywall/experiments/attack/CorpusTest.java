package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Attacks that are written down in the folder {@code corpus}, each for a reason. */
@Tag("long")
class CorpusTest {
  private static final Path CORPUS =
      Path.of("src/test/resources/org/tallywall/experiments/attack/corpus");

  @TempDir static Path folder;

  private static Seeds seeds;
  private static Lane lane;

  @BeforeAll
  static void playTinyStudies() {
    seeds = new Seeds(folder.resolve("seeds"));
    lane = new Lane(folder);
  }

  @AfterAll
  static void close() {
    lane.close();
  }

  static List<String> cases() throws IOException {
    try (Stream<Path> files = Files.list(CORPUS)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void attack_isAnsweredAsPromised(String name) throws IOException {
    Case written = Case.read(name, Files.readString(CORPUS.resolve(name)), seeds);
    Attack attack = written.attack();
    Outcome outcome = lane.put(attack);
    String shown =
        written.why()
            + "\n"
            + attack.command()
            + "\nexit code "
            + outcome.code()
            + "\n"
            + Promise.start(outcome.err().text());

    assertThat(Promise.broken(attack, outcome)).as(shown).isEmpty();
    if (!written.codes().isEmpty()) {
      assertThat(outcome.code()).as(shown).isIn(written.codes());
    }
    if (written.keeps()) {
      assertThat(outcome.after().keySet()).as(shown).containsAll(outcome.before().keySet());
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("org.tallywall.experiments.attack.LargeAttacks#all")
  void largeAttack_isAnsweredAsPromised(LargeAttacks large) {
    Attack attack = large.attack();
    Outcome outcome = lane.put(attack);
    String shown = attack.command() + "\n" + Promise.start(outcome.err().text());

    assertThat(Promise.broken(attack, outcome)).as(shown).isEmpty();
    assertThat(outcome.code()).as(shown).isIn(large.codes());
  }
}
