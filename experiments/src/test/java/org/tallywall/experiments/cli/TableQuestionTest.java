package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a table study that asks about nothing else says first: the sections of its card, or the
 * lines where the card has one section alone, each from the file of that name.
 */
class TableQuestionTest {
  private static final String ONE_SECTION =
      """
      { "card": "Bollard test card", "families": [ { "family": "Ladders", "lines": [
        { "id": "Rung", "tiles": "FF 11x 222x 333x 4444x", "slide": "any", "value": 25 },
        { "id": "Rail", "tiles": "22x 33y 444x 555y 6666x", "slide": "any", "value": 30 } ] } ] }
      """;

  @TempDir Path folder;

  private String headline(String card) throws IOException {
    Cards.write(folder, "card.json", card);
    String study =
        Cards.write(
            folder,
            "study.json",
            """
            { "study": "table", "card": "card.json", "seed": 12, "deals": 60,
              "table": ["nearest", "nearest", "nearest", "nearest"] }
            """);
    Typed typed = Typed.run("run", study, "--out", folder.resolve("out").toString());
    assertThat(typed.code()).as(typed.err()).isZero();
    return Files.readAllLines(folder.resolve("out/notes.md")).stream()
        .filter(line -> line.startsWith("**Of 100 wins"))
        .findFirst()
        .orElseThrow();
  }

  /** The row with the most wins. */
  private String most(String file, String name) throws IOException {
    List<String> lines = Files.readAllLines(folder.resolve("out").resolve(file));
    List<String> columns = List.of(lines.get(0).split(",", -1));
    String most = "";
    long wins = 0;
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      long won = Long.parseLong(cells[columns.indexOf("wins")]);
      most = won > wins ? cells[columns.indexOf(name)] : most;
      wins = Math.max(won, wins);
    }
    assertThat(wins).isPositive();
    return most;
  }

  @Test
  void card_ofSeveralSections_isToldByThem() throws IOException {
    String headline = headline(Cards.SMALL);

    String most = most("families.csv", "family");
    assertThat(headline).containsPattern("^[^(]* came with \\Q" + most + "\\E \\(");
  }

  @Test
  void card_ofOneSection_isToldByItsLines() throws IOException {
    String headline = headline(ONE_SECTION);

    String most = most("hand-choice.csv", "line");
    assertThat(headline)
        .containsPattern("^[^(]* came with \\Q" + most + "\\E \\(")
        .contains("Rung", "Rail")
        .doesNotContain("Ladders");
  }
}
