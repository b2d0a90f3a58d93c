package org.tallywall.strategies.catalog;

import java.nio.file.Path;

/**
 * Where a player from a user's own jar comes from.
 *
 * @param file the jar
 * @param digest the digest of the names and contents of all files in it, whatever their order and
 *     time stamps: "sha256:" and 64 hexadecimal digits
 * @param name what the player is called in the jar: a class, or the id of one that it lists
 */
public record JarOrigin(Path file, String digest, String name) {
  /** How the name of such a player begins. */
  public static final String PREFIX = "jar:";

  /** What stands between the jar and the player. */
  public static final char MARK = '!';

  /**
   * What is written in a study to name the player.
   *
   * @param path the jar's path as it is to be written
   * @return as in {@code jar:my.jar!my.pkg.MyPlayer}
   */
  public String word(String path) {
    return PREFIX + path + MARK + name;
  }

  /**
   * The jar's name without its folder.
   *
   * @return as in {@code my.jar}
   */
  public String fileName() {
    return file.getFileName().toString();
  }
}
