package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spoiled files, folders and commands of fixed seeds: every one is answered as promised. */
@Tag("long")
class MutantsTest {
  private static final Path SAVED = Path.of("target", "attack");
  private static final long SEED = 20261130;

  /** About what is put in ten minutes on two slow processors. */
  private static final int AT_LENGTH = 100_000;

  private static final int QUICKLY = 600;

  @TempDir Path folder;

  @Test
  void hundredsOfAttacks_areAnsweredAsPromised() throws IOException {
    assertAnswered(SEED, QUICKLY);
  }

  @Test
  void manyAttacks_areAnsweredAsPromised() throws IOException {
    assertAnswered(SEED + 1, AT_LENGTH);
  }

  private void assertAnswered(long seed, int attacks) throws IOException {
    Findings findings = new Findings(SAVED);
    Sources sources = new Sources(new Seeds(Files.createDirectories(folder.resolve("seeds"))));
    new Campaign(sources, seed, folder, findings).run(attacks);

    assertThat(findings.breaches()).as(findings.words()).isZero();
  }
}
