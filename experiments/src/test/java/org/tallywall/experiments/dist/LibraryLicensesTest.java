package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Guards the promise that the zip file says of every library what license it is under, and holds
 * the texts that go with it.
 */
@Tag("zip")
class LibraryLicensesTest {

  /** A sentence that only the whole text of a license has. */
  private static final Map<String, String> SENTENCES =
      Map.of(
          "Apache-2.0", "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
          "MIT", "Permission is hereby granted, free of charge");

  private static final Pattern ROW =
      Pattern.compile("([a-z0-9-]+) +([0-9][0-9.]*) +(\\S+) +(\\S+(?:, \\S+)*)");

  private static Map<String, byte[]> shipped;
  private static List<Row> rows;

  /** A row of the list. */
  private record Row(String library, String version, String license, List<String> folders) {}

  @BeforeAll
  static void read() throws IOException {
    shipped = ZipFiles.shipped();
    rows =
        Files.readAllLines(Path.of("src/main/dist/LIBRARIES.txt")).stream()
            .map(ROW::matcher)
            .filter(Matcher::matches)
            .map(
                row ->
                    new Row(
                        row.group(1),
                        row.group(2),
                        row.group(3),
                        List.of(row.group(4).split(", "))))
            .toList();
  }

  @Test
  void list_rows_areTheLibrariesOfTheBill() throws IOException {
    BillOfMaterials bill =
        BillOfMaterials.read(Path.of("src/main/dist/bill-of-materials.cdx.json"));

    assertThat(rows)
        .extracting(row -> row.library() + " " + row.version() + " " + row.license())
        .containsExactlyElementsOf(
            bill.libraries().stream()
                .map(l -> l.name() + " " + l.version() + " " + l.license())
                .sorted()
                .toList());
  }

  @Test
  void list_inTheZip_isTheOneCheckedIn() throws IOException {
    assertThat(ZipFiles.text(shipped.get("LIBRARIES.txt")).replace("\r\n", "\n"))
        .isEqualTo(Files.readString(Path.of("src/main/dist/LIBRARIES.txt")));
  }

  @Test
  void texts_ofEveryRow_haveTheWholeLicense() {
    for (Row row : rows) {
      assertThat(row.folders())
          .as(row.toString())
          .anySatisfy(folder -> assertThat(textsIn(folder)).contains(SENTENCES.get(row.license())));
    }
  }

  @Test
  void texts_inTheZip_areThoseOfTheLibrariesOwnJars() throws IOException {
    Map<String, byte[]> own = new TreeMap<>();
    Map<String, Path> jars = ShippedLibraries.jars();
    for (Row row : rows) {
      String jar = row.library() + "-" + row.version();
      assertThat(jars).containsKey(jar);
      ZipFiles.in(jars.get(jar))
          .forEach(
              (name, text) -> {
                if (name.matches("META-INF/[^/]*(LICENSE|NOTICE)[^/]*")) {
                  own.put("licenses/" + row.library() + "/" + name, text);
                }
              });
    }
    Map<String, byte[]> there = new TreeMap<>(shipped);
    there.keySet().removeIf(name -> !name.startsWith("licenses/"));

    assertThat(there.keySet()).isEqualTo(own.keySet());
    assertThat(own).allSatisfy((name, text) -> assertThat(there.get(name)).isEqualTo(text));
  }

  private static String textsIn(String folder) {
    StringBuilder texts = new StringBuilder();
    shipped.forEach(
        (name, text) -> {
          if (name.startsWith("licenses/" + folder + "/")) {
            texts.append(ZipFiles.text(text));
          }
        });
    return texts.toString();
  }
}
