package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.card.Line;

/** The cards on which the ladder is played: good ones, and unlike each other. */
class CardsOfTheProjectTest {
  static List<Path> cards() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("cards"))) {
      return files
          .filter(file -> file.toString().endsWith(".json") && !file.endsWith("card.schema.json"))
          .sorted()
          .toList();
    }
  }

  private static double share(String name, java.util.function.Predicate<Line> which) {
    Card card = CardFile.read(Path.of("cards", name + ".json")).orThrow();
    return (double) card.lines().stream().filter(which).count() / card.lines().size();
  }

  @ParameterizedTest
  @MethodSource("cards")
  void card_hasFortyToSixtyLinesAndNoFaults(Path file) {
    Typed typed = Typed.run("card", "check", file.toString());
    assertThat(typed.code()).isZero();
    assertThat(typed.out()).startsWith("ok:").doesNotContain("warning");
    assertThat(CardFile.read(file).orThrow().lines()).hasSizeBetween(40, 60);
  }

  @Test
  void cards_areUnlikeEachOther() {
    assertThat(share("pebble-cove", line -> line.value() <= 30)).isGreaterThan(0.9);
    assertThat(share("lantern-street", Line::concealed)).isGreaterThan(0.6);
    assertThat(share("lantern-street", line -> !line.hasLargeGroup())).isGreaterThan(0.2);
    assertThat(share("kite-hill", line -> line.value() >= 40)).isGreaterThan(0.35);
    assertThat(share("saltmarsh-quay", Line::concealed)).isLessThan(0.4);
  }
}
