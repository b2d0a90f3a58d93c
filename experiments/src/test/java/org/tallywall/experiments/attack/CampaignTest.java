package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** As many attacks as somebody wants: {@code mvn verify -Pattack}, as DEVELOPERS.md says. */
@Tag("attack")
class CampaignTest {
  private static final Path SAVED = Path.of("target", "attack");

  @TempDir Path folder;

  @Test
  void attacks_areAllAnsweredAsPromised() throws IOException {
    long attacks = Long.getLong("attack.inputs", 100_000);
    long seed = Long.getLong("attack.seed", 1);
    Findings findings = new Findings(SAVED);
    Sources sources = new Sources(new Seeds(Files.createDirectories(folder.resolve("seeds"))));
    long start = System.nanoTime();
    new Campaign(sources, seed, folder, findings).run(attacks);
    double seconds = (System.nanoTime() - start) / 1e9;
    System.out.printf(
        "%d attacks, seed %d, %.0f s, %.0f a second%n", attacks, seed, seconds, attacks / seconds);
    System.out.println(findings.table());
    System.out.println(findings.sorts());

    assertThat(findings.breaches()).as(findings.words()).isZero();
  }
}
