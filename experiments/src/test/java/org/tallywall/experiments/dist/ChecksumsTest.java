package org.tallywall.experiments.dist;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Guards the promise that "sha256sum -c" tells whether the zip file arrived whole, and whether what
 * was unpacked still is what was packed.
 */
@Tag("zip")
class ChecksumsTest {

  private static final String SUMS = "SHA256SUMS";

  @Test
  void sumsInTheZip_areThoseOfEveryOtherFileInIt() throws IOException {
    Map<String, byte[]> files = ZipFiles.shipped();
    String sums = ZipFiles.text(files.remove(SUMS));

    assertThat(sums).isEqualTo(sumsOf(files));
  }

  @Test
  void sumsBesideTheZip_areThoseOfTheZipAndTheBill() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    Path zip = UnpackedZip.zip();
    Path bill = zip.resolveSibling("bill-of-materials.cdx.json");
    files.put(bill.getFileName().toString(), Files.readAllBytes(bill));
    files.put(zip.getFileName().toString(), Files.readAllBytes(zip));

    assertThat(zip.resolveSibling(SUMS)).hasContent(sumsOf(files));
  }

  /** What sha256sum reads: digest, blank, a star for "byte by byte", name. */
  private static String sumsOf(Map<String, byte[]> files) {
    StringBuilder sums = new StringBuilder();
    files.forEach(
        (name, file) -> sums.append(ZipFiles.sha256(file)).append(" *").append(name).append('\n'));
    return sums.toString();
  }
}
