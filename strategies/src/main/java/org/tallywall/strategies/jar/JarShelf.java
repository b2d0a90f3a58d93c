package org.tallywall.strategies.jar;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.strategies.catalog.JarOrigin;
import org.tallywall.strategies.catalog.PlayerFinder;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.catalog.WrongPlayerException;

/** Finds players in jars; each jar is read once. */
public final class JarShelf implements PlayerFinder {
  private final Map<Path, PlayerJar> jars;
  private final JarTrust named;

  /** A shelf without jars yet; every jar that is named may run. */
  public JarShelf() {
    this(JarTrust.ALL);
  }

  /**
   * A shelf without jars yet.
   *
   * @param named says of the jars that a player's word names whether they may run; those of a
   *     folder that somebody names whole may
   */
  public JarShelf(JarTrust named) {
    this(new LinkedHashMap<>(), named);
  }

  private JarShelf(Map<Path, PlayerJar> jars, JarTrust named) {
    this.jars = jars;
    this.named = named;
  }

  /**
   * The same jars for whoever may name others.
   *
   * @param others says of jars that are not on the shelf yet whether they may run
   * @return a shelf with the same jars on it
   */
  public JarShelf under(JarTrust others) {
    return new JarShelf(jars, others);
  }

  @Override
  public boolean knows(String word) {
    return word.startsWith(JarOrigin.PREFIX);
  }

  @Override
  public void tryOut(PlayerSpec spec) {
    spec.type().origin().ifPresent(origin -> PlayerJar.tryOut(spec, origin));
  }

  @Override
  public PlayerType type(String word, Path folder) {
    int mark = word.lastIndexOf(JarOrigin.MARK);
    int start = JarOrigin.PREFIX.length();
    if (mark <= start || mark == word.length() - 1) {
      throw new WrongPlayerException(
          "\"" + word + "\" does not name a player in a jar; write jar:my.jar!my.pkg.MyPlayer");
    }
    try {
      return jar(folder.resolve(word.substring(start, mark)), named).type(word.substring(mark + 1));
    } catch (InvalidPathException impossible) {
      throw new WrongPlayerException(
          "\"" + word.substring(start, mark) + "\" cannot be the name of a jar", impossible);
    }
  }

  @Override
  public List<PlayerType> all(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new WrongPlayerException(
          Files.exists(folder)
              ? "\"" + folder + "\" is not a folder; name the folder that holds the jars"
              : "there is no folder \"" + folder + "\"; name the folder that holds the jars");
    }
    List<PlayerType> types = new ArrayList<>();
    for (Path file : jarsIn(folder)) {
      PlayerJar jar = jar(file, JarTrust.ALL);
      if (jar.listed().isEmpty()) {
        throw new WrongPlayerException(
            "\"%s\" lists no players: it has no %s; a single class can be named as jar:%s!my.pkg.MyPlayer"
                .formatted(file, JarList.FILE, file));
      }
      types.addAll(jar.listed());
    }
    if (types.isEmpty()) {
      throw new WrongPlayerException("the folder \"" + folder + "\" has no jars in it");
    }
    return types;
  }

  private static List<Path> jarsIn(Path folder) {
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.jar")) {
      found.forEach(files::add);
    } catch (IOException unreadable) {
      throw new WrongPlayerException("\"" + folder + "\" cannot be read", unreadable);
    }
    files.sort(null);
    return files;
  }

  private PlayerJar jar(Path file, JarTrust trust) {
    Path whole = file.toAbsolutePath().normalize();
    PlayerJar known = jars.get(whole);
    if (known != null) {
      return known;
    }
    PlayerJar jar = new PlayerJar(file, trust);
    for (PlayerJar other : jars.values()) {
      check(jar, other);
    }
    jars.put(whole, jar);
    return jar;
  }

  /** Results name players by their jars' names without folders, or by their ids. */
  private static void check(PlayerJar jar, PlayerJar other) {
    if (jar.digest().equals(other.digest())) {
      return;
    }
    if (jar.file().getFileName().equals(other.file().getFileName())) {
      throw new WrongPlayerException(
          "\"%s\" and \"%s\" are different jars of one name; rename one of them"
              .formatted(other.file(), jar.file()));
    }
    for (PlayerType type : jar.listed()) {
      if (other.listed().stream().anyMatch(known -> known.id().equals(type.id()))) {
        throw new WrongPlayerException(
            "both \"%s\" and \"%s\" list a player \"%s\"; give one of them another id"
                .formatted(other.file(), jar.file(), type.id()));
      }
    }
  }
}
