package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Guards the promise that zip file and jar hold what is needed and nothing else: no class or file
 * of tests, no leftovers of how the libraries were packed, nothing that tells of the machine that
 * built them.
 */
@Tag("zip")
class ShippedFilesTest {

  /** What may lie in the zip file. */
  private static final List<String> IN_ZIP =
      List.of(
          "tallywall(\\.cmd)?",
          "README\\.txt|CHANGELOG\\.md|LIBRARIES\\.txt|SHEETS\\.md",
          "SHA256SUMS|bill-of-materials\\.cdx\\.json",
          "lib/tallywall\\.jar",
          "cards/[a-z-]+(\\.schema)?\\.json",
          "scenes/([a-z0-9-]+/)?([a-z0-9-]+\\.(json|txt|md)|README\\.md)",
          "studies/[a-z-]+\\.(json|svg)",
          "licenses/[a-z0-9-]+/META-INF/[A-Za-z-]*(LICENSE|NOTICE)(\\.txt)?");

  /** What may lie in the jar. Classes of one version of Java only, and none of modules. */
  private static final List<String> IN_JAR =
      List.of(
          "META-INF/MANIFEST\\.MF",
          "META-INF/services/tools\\.jackson\\.(core|databind)\\.[A-Za-z]+",
          "META-INF/[A-Za-z-]*(LICENSE|NOTICE)(\\.txt)?",
          "org/tallywall/(core|strategies|reports|experiments)/.+\\.(class|css|js|txt)",
          "(com/fasterxml/jackson/annotation|tools/jackson/(core|databind|dataformat/csv))/.+\\.class",
          "(com/github/weisj/jsvg|picocli|org/apache/commons/(math3|rng))/.+\\.class",
          "assets/org/apache/commons/math3/.+");

  private static Map<String, byte[]> zip;
  private static Map<String, byte[]> jar;

  @BeforeAll
  static void read() throws IOException {
    zip = ZipFiles.shipped();
    jar = ZipFiles.program();
  }

  @Test
  void zip_files_areOfTheKindsThatArePlanned() {
    assertThat(zip.keySet()).hasSizeGreaterThan(100).allMatch(name -> matches(name, IN_ZIP));
  }

  @Test
  void jar_files_areOfTheKindsThatArePlanned() {
    assertThat(jar.keySet())
        .hasSizeGreaterThan(1000)
        .allMatch(name -> matches(name, IN_JAR))
        .noneMatch(name -> name.contains("module-info") || name.contains("META-INF/versions"));
  }

  @Test
  void jar_filesOfThisProject_haveTheirSourceOutsideTheTests() throws IOException {
    Set<String> sources = new TreeSet<>();
    for (String module : List.of("../core", "../strategies", "../reports", ".")) {
      for (String kind : List.of("java", "resources")) {
        addFiles(Path.of(module, "src/main", kind), sources);
      }
    }

    List<String> own = jar.keySet().stream().filter(n -> n.startsWith("org/tallywall/")).toList();

    assertThat(own)
        .isNotEmpty()
        .allMatch(name -> sources.contains(name.replaceFirst("(\\$.*)?\\.class$", ".java")));
  }

  @Test
  void files_ofZipAndJar_sayNothingOfThisMachine() {
    Path project = Path.of("").toAbsolutePath().getParent();
    List<String> secrets =
        List.of(
            project.toString(),
            System.getProperty("user.home") + "/",
            System.getProperty("java.home"),
            "/.m2/repository");

    for (Map<String, byte[]> files : List.of(zip, jar)) {
      assertThat(files)
          .allSatisfy(
              (name, file) ->
                  assertThat(new String(file, StandardCharsets.ISO_8859_1))
                      .doesNotContain(secrets));
    }
  }

  private static boolean matches(String name, List<String> patterns) {
    return patterns.stream().anyMatch(name::matches);
  }

  private static void addFiles(Path folder, Set<String> names) throws IOException {
    if (Files.isDirectory(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        files.filter(Files::isRegularFile).forEach(f -> names.add(folder.relativize(f).toString()));
      }
    }
  }
}
