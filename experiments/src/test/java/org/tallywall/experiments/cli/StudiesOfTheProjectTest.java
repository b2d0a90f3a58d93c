package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every study that comes with the project runs on the user's own card and table rules, unedited.
 */
@Tag("one-jdk")
class StudiesOfTheProjectTest {
  private static final String CARD =
      """
      family;tiles;value;slide
      Ladders;FF 11x 222x 333x 4444x;25;any
      Ladders;22x 33y 444x 555y 6666x;30;any
      Echoes;nnnx nnny nnnz FFF NN;25;
      """;

  private static final Path LADDER = Path.of("studies/ladder.json");

  /** Names the families of its own card. */
  private static final Path SECTIONS = Path.of("studies/which-section-first.json");

  @TempDir Path folder;

  static List<Path> studies() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("studies"))) {
      return files
          .filter(file -> file.toString().endsWith(".json"))
          .filter(file -> !file.equals(LADDER) && !file.equals(SECTIONS))
          .sorted()
          .toList();
    }
  }

  /** The ladder plays at least one whole round, and two of its players take their time. */
  @Test
  void ladder_withoutItsSlowPlayers_runs() throws IOException {
    String quick =
        Files.readAllLines(LADDER).stream()
            .filter(line -> !line.contains("\"rollout\":") && !line.contains("\"open-tiles\":"))
            .collect(Collectors.joining("\n"));
    study_onASpreadsheetsCardWithAColdWall_runs(Path.of(Cards.write(folder, "quick.json", quick)));
    assertThat(Files.readAllLines(folder.resolve("out/ratings.csv"))).hasSize(8);
  }

  @Test
  @Tag("long")
  void ladder_whole_runs() throws IOException {
    study_onASpreadsheetsCardWithAColdWall_runs(LADDER);
    assertThat(Files.readAllLines(folder.resolve("out/ratings.csv"))).hasSize(10);
  }

  /** Every family of its card is an arm, and another card is refused before a deal is played. */
  @Test
  void sections_areThoseOfTheirCard_andOfNoOther() throws IOException {
    String card = Cards.write(folder, "Club, 2026.csv", CARD);
    String families =
        Files.readString(Path.of("cards/saltmarsh-quay.json"))
            .lines()
            .filter(line -> line.contains("\"family\""))
            .map(line -> line.replaceAll(".*\"family\": (\"[^\"]+\").*", "$1"))
            .collect(Collectors.joining("|"));
    assertThat(Files.readAllLines(SECTIONS))
        .filteredOn(line -> line.matches(".*\"aim.prefer-family\": (" + families + ") }.*"))
        .hasSize(families.split("[|]").length);

    Typed other =
        Typed.run(
            "run", SECTIONS.toString(), "--card", card, "--out", folder.resolve("o").toString());
    assertThat(other.code()).isEqualTo(2);
    assertThat(other.err())
        .contains("does not have (\"Skips\", ", "tallywall study new sections --card ");
    assertThat(folder.resolve("o")).doesNotExist();
    Path out = folder.resolve("out");
    Typed own = Typed.run("run", SECTIONS.toString(), "--deals", "2", "--out", out.toString());
    assertThat(own.err()).isEmpty();
    assertThat(own.code()).isZero();
    assertThat(out.resolve("ways.csv")).content().contains("leans toward the family “Towers”");
  }

  /**
   * The first 500 deals of a run that may stop only tell what to expect; who plays games out takes
   * long for each.
   */
  private static String deals(Path study) throws IOException {
    String text = Files.readString(study);
    return text.contains("\"until\"") ? "501" : text.contains("\"rollout\"") ? "2" : "12";
  }

  @ParameterizedTest
  @Tag("long")
  @MethodSource("studies")
  void study_onASpreadsheetsCardWithAColdWall_runs(Path study) throws IOException {
    String card = Cards.write(folder, "Club, 2026.csv", CARD);
    String rules = Cards.write(folder, "cold.json", "{ \"wall.cold\": \"NO_CLAIM\" }");
    Path out = folder.resolve("out");

    Typed typed =
        Typed.run(
            "run",
            study.toString(),
            "--card",
            card,
            "--rules",
            rules,
            "--deals",
            deals(study),
            "--out",
            out.toString());

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    String manifest = Files.readString(out.resolve("manifest.json"));
    assertThat(manifest).contains("\"derived\"").contains("Club, 2026.csv").contains("cold.json");
    assertThat(Files.readString(out.resolve("study.json")))
        .containsPattern("\"wall.cold\"\\s*:\\s*\"NO_CLAIM\"");
  }
}
