package org.tallywall.experiments.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where players lose points, as typed. */
class SchoolCommandTest {
  private static final String CARD = "cards/saltmarsh-quay.json";

  @TempDir Path folder;

  private Typed school(String out, String... more) {
    List<String> words = new ArrayList<>(List.of("school", "--card", CARD));
    words.addAll(List.of("--players", "nearest", "--decisions", "16", "--games", "40"));
    words.addAll(List.of("--worlds", "4", "--out", folder.resolve(out).toString()));
    words.addAll(List.of(more));
    return Typed.run(words.toArray(new String[0]));
  }

  private Map<String, String> files(String out) throws IOException {
    Map<String, String> files = new TreeMap<>();
    Path home = folder.resolve(out);
    try (Stream<Path> all = Files.walk(home)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(home.relativize(file).toString().replace('\\', '/'), Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void school_writesTheSameWithAnyThreads_andGoesOnWhereItWas() throws IOException {
    Typed typed = school("one", "--threads", "1");

    assertThat(typed.err()).isEmpty();
    assertThat(typed.code()).isZero();
    assertThat(typed.out())
        .startsWith("In all, the choices found here would bring one player ")
        .contains("the first right", "all", "Wrote ");
    Map<String, String> files = files("one");
    assertThat(files)
        .containsKeys(
            "school.json",
            "school.csv",
            "kinds.csv",
            "dearest.csv",
            "notes.md",
            "report.html",
            "charts/points-lost.svg");
    assertThat(files.keySet().stream().filter(name -> name.startsWith("dearest/")).count())
        .isEqualTo(files.get("dearest.csv").lines().count() - 1);
    assertThat(school("two", "--threads", "3").code()).isZero();
    assertThat(files("two")).isEqualTo(files);

    Path cut = folder.resolve("two/school.csv");
    String lines = Files.readString(cut);
    Files.writeString(cut, lines.substring(0, lines.length() / 2));
    Files.delete(folder.resolve("two/report.html"));
    assertThat(school("two", "--threads", "2").code()).isZero();
    assertThat(files("two")).isEqualTo(files);
    assertThat(school("two").out()).contains("All of it was there already");
    Typed other = school("two", "--seed", "2");
    assertThat(other.code()).isEqualTo(2);
    assertThat(other.err()).contains("holds decisions of another card, other rules or players");
  }

  /** A sheet of the dearest can be reviewed as it stands. */
  @Test
  void dearest_isASheet() throws IOException {
    assertThat(school("one", "--seed", "3").code()).isZero();
    try (Stream<Path> sheets = Files.list(folder.resolve("one/dearest"))) {
      Path sheet = sheets.sorted().findFirst().orElseThrow();
      Typed typed =
          Typed.run("review", sheet.toString(), "--card", CARD, "--playouts", "40", "--short");
      assertThat(typed.err()).isEmpty();
      assertThat(typed.code()).isZero();
    }
  }

  @Test
  void foreignFolder_isRefusedAndLeftAlone() throws IOException {
    Path mine = Files.createDirectories(folder.resolve("one")).resolve("letter.txt");
    Files.writeString(mine, "dear");

    Typed typed = school("one");

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains("is there already and holds something else");
    assertThat(files("one")).isEqualTo(Map.of("letter.txt", "dear"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--players|nobody|nobody",
        "--players|nearest,nearest|--players takes one name, or four with commas between, not 2",
        "--players|open-tiles|sees all racks and the wall",
        "--decisions|0|--decisions takes a number from 1 to 50,000, not 0",
        "--games|0|--games takes a number from 1 to 1,000,000, not 0",
        "--worlds|-3|--worlds takes a number from 1 to 100,000, not -3",
        "--threads|0|--threads is 1 to 1000, not 0",
        "--rules|nowhere.json|nowhere.json",
        "--seed|x|seed"
      })
  void wrongWords_areRefused(String option, String value, String says) {
    String out = folder.resolve("one").toString();
    Typed typed = Typed.run("school", "--card", CARD, "--out", out, option, value);

    assertThat(typed.code()).isEqualTo(2);
    assertThat(typed.err()).contains(says);
    assertThat(folder.resolve("one")).doesNotExist();
  }

  @Test
  void wrongCard_isRefused() {
    assertThat(Typed.run("school").err()).contains("--card FILE is missing");
    assertThat(Typed.run("school", "--card", "studies/first-look.json").code()).isEqualTo(2);
    assertThat(Typed.run("school", "--card", "nowhere.json").code()).isEqualTo(2);
  }
}
