package org.tallywall.experiments.dist;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The files of a zip file or jar by their names, read whole; folders are left out. */
final class ZipFiles {

  private ZipFiles() {}

  /** Every file of the finished zip file, by its name below the one folder that all are in. */
  static Map<String, byte[]> shipped() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    for (Map.Entry<String, byte[]> file : in(UnpackedZip.zip()).entrySet()) {
      String[] names = file.getKey().split("/", 2);
      if (!UnpackedZip.zip().getFileName().toString().equals(names[0] + ".zip")) {
        throw new IllegalStateException(file.getKey() + " is not in the folder of the zip file");
      }
      files.put(names[1], file.getValue());
    }
    return files;
  }

  /** Every file of the program's jar, as it lies in the finished zip file. */
  static Map<String, byte[]> program() throws IOException {
    return in(new ByteArrayInputStream(shipped().get("lib/tallywall.jar")));
  }

  static Map<String, byte[]> in(Path zip) throws IOException {
    try (InputStream bytes = Files.newInputStream(zip)) {
      return in(bytes);
    }
  }

  private static Map<String, byte[]> in(InputStream bytes) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(bytes, StandardCharsets.UTF_8)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (!entry.isDirectory() && files.put(entry.getName(), zip.readAllBytes()) != null) {
          throw new IllegalStateException(entry.getName() + " is there twice");
        }
      }
    }
    return files;
  }

  static String text(byte[] file) {
    return new String(file, StandardCharsets.UTF_8);
  }

  static String sha256(byte[] file) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
