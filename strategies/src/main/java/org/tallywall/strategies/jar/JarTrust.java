package org.tallywall.strategies.jar;

import java.nio.file.Path;
import java.util.Map;
import org.tallywall.strategies.catalog.WrongPlayerException;

/**
 * Whether code from a jar may run. A jar is a program like any other: it runs only when somebody
 * who can judge that has said so.
 */
@FunctionalInterface
public interface JarTrust {
  /** Every jar may run: whoever calls has named it. */
  JarTrust ALL = (file, digest) -> {};

  /**
   * Refuses a jar that may not run; nothing of it has run before.
   *
   * @param file the jar
   * @param digest the digest of what it holds
   * @throws WrongPlayerException if it may not run
   */
  void permit(Path file, String digest);

  /**
   * No jar may run.
   *
   * @param remedy what to write so that it may, as in "add --trust-jars"
   * @return a trust that refuses
   */
  static JarTrust none(String remedy) {
    return (file, digest) -> {
      throw new WrongPlayerException(
          "\""
              + file
              + "\" is a jar, and a jar is a program: it could do anything you can. If you"
              + " trust it, "
              + remedy);
    };
  }

  /**
   * Only jars may run that are still what they were in a run.
   *
   * @param digests the digests by the jars' names without folders
   * @return a trust that refuses others
   */
  static JarTrust only(Map<String, String> digests) {
    return (file, digest) -> {
      if (!digest.equals(digests.get(file.getFileName().toString()))) {
        throw new WrongPlayerException(
            "\""
                + file
                + "\" is not the jar that was played: it has changed since then, so it was not run");
      }
    };
  }
}
