package org.tallywall.core.text;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 digests as text (FIPS 180-4). */
public final class Sha256 {
  private Sha256() {}

  /**
   * The digest of some bytes.
   *
   * @param bytes any bytes
   * @return "sha256:" and 64 hexadecimal digits in lower case
   */
  public static String of(byte[] bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
      return "sha256:" + HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
