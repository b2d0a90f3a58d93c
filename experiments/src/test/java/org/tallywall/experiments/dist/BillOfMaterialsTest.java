package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.experiments.dist.BillOfMaterials.Library;

/**
 * Guards the promise that the bill of materials names exactly the libraries in the program's jar,
 * each at its version and with the digest of the jar that it came in. A library that is new, gone,
 * raised or tampered with on its way here fails; what to do then is in DEVELOPERS.md, "Libraries".
 */
@Tag("zip")
class BillOfMaterialsTest {

  private static final String NAME = "bill-of-materials.cdx.json";
  private static final Path SOURCE = Path.of("src/main/dist", NAME);

  private static BillOfMaterials bill;
  private static Map<String, Path> jars;

  @BeforeAll
  static void look() throws IOException {
    bill = BillOfMaterials.read(SOURCE);
    jars = ShippedLibraries.jars();
  }

  @Test
  void bill_libraries_areThoseWhoseClassesAreInTheJar() throws IOException {
    Map<String, String> listed = new TreeMap<>();
    for (Library library : bill.libraries()) {
      listed.put(library.name() + "-" + library.version(), library.sha256());
    }
    Map<String, String> found = new TreeMap<>();
    for (Map.Entry<String, Path> jar : jars.entrySet()) {
      found.put(jar.getKey(), ZipFiles.sha256(Files.readAllBytes(jar.getValue())));
    }

    assertThat(listed).isEqualTo(found);
  }

  @Test
  void jar_classesFromElsewhere_areThoseOfTheLibrariesToTheByte() throws IOException {
    Map<String, byte[]> original = new HashMap<>();
    for (Path jar : jars.values()) {
      original.putAll(ZipFiles.in(jar));
    }

    List<String> strange =
        ZipFiles.program().entrySet().stream()
            .filter(file -> ShippedLibraries.isLibraryClass(file.getKey()))
            .filter(file -> !Arrays.equals(file.getValue(), original.get(file.getKey())))
            .map(Map.Entry::getKey)
            .toList();

    assertThat(strange).isEmpty();
  }

  @Test
  void bill_inTheZipAndBesideIt_isTheOneCheckedIn() throws IOException {
    assertThat(ZipFiles.shipped().get(NAME)).isEqualTo(Files.readAllBytes(SOURCE));
    assertThat(UnpackedZip.zip().resolveSibling(NAME)).hasSameBinaryContentAs(SOURCE);
  }

  @Test
  void bill_version_isThatOfTheZip() {
    assertThat(UnpackedZip.zip()).hasFileName("tallywall-" + bill.version() + ".zip");
  }

  @Test
  void bill_text_hasNothingThatChangesAndNoPlaceToDownloadFrom() throws IOException {
    assertThat(Files.readString(SOURCE))
        .doesNotContain("serialNumber", "timestamp", "distribution", "maven2", "file:", "\r");
  }
}
