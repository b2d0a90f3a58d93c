package org.tallywall.experiments.attack;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The same seed and number are the same attack; others are others, and nothing leaves its folder.
 */
@Tag("one-jdk")
class SourcesTest {
  private static final int ATTACKS = 3_000;

  @TempDir Path folder;

  @Test
  void attacks_areRepeatable_differ_andStayInTheirFolder() {
    Seeds seeds = new Seeds(folder.resolve("seeds"));
    Sources first = new Sources(seeds);
    Sources second = new Sources(seeds);
    Set<String> commands = new HashSet<>();
    Set<String> kinds = new HashSet<>();
    for (int number = 0; number < ATTACKS; number++) {
      Attack attack = first.attack(7, number);
      assertThat(second.attack(7, number).words()).isEqualTo(attack.words());
      assertThat(second.attack(7, number).shown()).isEqualTo(attack.shown());
      for (int at = 1; at < attack.words().size(); at++) {
        if (Set.of("--out", "--record", "--html").contains(attack.words().get(at - 1))) {
          assertThat(attack.words().get(at)).startsWith(Attack.HERE).doesNotContain("..");
        }
      }
      commands.add(attack.command() + attack.shown());
      kinds.add(attack.name());
    }
    assertThat(commands.size()).isGreaterThan(ATTACKS * 9 / 10);
    assertThat(kinds).hasSizeGreaterThan(first.all().size() - 3);
  }

  @Test
  void shares_addUp() {
    Seeds seeds = new Seeds(folder.resolve("seeds"));

    assertThat(new Sources(seeds).all().stream().mapToInt(Source::share).sum())
        .isEqualTo(Sources.SHARES);
  }
}
