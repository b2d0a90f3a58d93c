package org.tallywall.core.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Digests of the published examples: NIST, FIPS 180-2 with change notice, appendix B.1 and B.2. */
class Sha256Test {
  @ParameterizedTest
  @CsvSource({
    "abc, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
    "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq,"
        + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
  })
  void digest_ofAPublishedExample_isThePublishedOne(String text, String digest) {
    assertThat(Sha256.of(text.getBytes(StandardCharsets.US_ASCII))).isEqualTo("sha256:" + digest);
  }
}
