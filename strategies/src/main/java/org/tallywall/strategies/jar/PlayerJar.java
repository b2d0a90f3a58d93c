package org.tallywall.strategies.jar;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.text.Nearest;
import org.tallywall.strategies.catalog.JarOrigin;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.catalog.WrongPlayerException;
import org.tallywall.strategies.setting.SettingValues;

/** A jar with players of a user's own. */
final class PlayerJar {
  private static final String CLASS = ".class";

  private final Path file;
  private final Map<String, byte[]> files;
  private final String digest;
  private final JarLoader loader;
  private final Map<String, PlayerType> classes = new LinkedHashMap<>();
  private final List<PlayerType> listed;

  /**
   * Reads a jar, and runs what lists its players.
   *
   * @param file the jar
   * @param trust says before anything runs whether it may
   */
  PlayerJar(Path file, JarTrust trust) {
    this.file = file;
    this.files = JarFiles.read(file);
    this.digest = JarFiles.digest(files);
    trust.permit(file, digest);
    this.loader = new JarLoader(files);
    this.listed = new JarList(this, loader).players();
  }

  Path file() {
    return file;
  }

  String digest() {
    return digest;
  }

  /** The players that the jar lists; none where it has no list. */
  List<PlayerType> listed() {
    return listed;
  }

  /** A player by the id under which the jar lists it, or by its class. */
  PlayerType type(String name) {
    for (PlayerType type : listed) {
      if (type.id().equals(name)) {
        return type;
      }
    }
    PlayerType type = classes.get(name);
    if (type == null) {
      type = ofClass(name);
      classes.put(name, type);
    }
    return type;
  }

  private PlayerType ofClass(String name) {
    Class<?> found = load(name);
    if (!Player.class.isAssignableFrom(found)) {
      throw wrong(name, "is not a player: it does not implement " + Player.class.getName());
    }
    if (!Modifier.isPublic(found.getModifiers()) || Modifier.isAbstract(found.getModifiers())) {
      throw wrong(name, "cannot be made; declare it \"public\" and not \"abstract\"");
    }
    try {
      found.getConstructor();
    } catch (NoSuchMethodException missing) {
      throw wrong(name, "cannot be made; give it a public constructor without parameters");
    }
    JarOrigin origin = new JarOrigin(file, digest, name);
    PlayerType type =
        new PlayerType(
            origin.word(origin.fileName()),
            "a player from " + origin.fileName(),
            List.of(),
            SeesOpenTable.class.isAssignableFrom(found),
            values -> made(origin, () -> instance(found)),
            Optional.of(origin));
    tryOut(type);
    return type;
  }

  private Class<?> load(String name) {
    if (!files.containsKey(name.replace('.', '/') + CLASS)) {
      List<String> names = new ArrayList<>(listed.stream().map(PlayerType::id).toList());
      names.addAll(classNames());
      throw new WrongPlayerException(
          names.isEmpty()
              ? "\"%s\" holds no classes".formatted(file)
              : "\"%s\" holds no player \"%s\"%s".formatted(file, name, Nearest.hint(name, names)));
    }
    try {
      return TimeLimit.wait("the class \"" + name + "\" in \"" + file + "\"", () -> loaded(name));
    } catch (WrongPlayerException told) {
      throw inJar(file, told);
    } catch (Throwable broken) {
      throw new WrongPlayerException(
          "the class \"%s\" in \"%s\" cannot be loaded%s".formatted(name, file, lacking(broken)),
          broken);
    }
  }

  private Class<?> loaded(String name) {
    try {
      return Class.forName(name, true, loader);
    } catch (ClassNotFoundException missing) {
      throw new NoClassDefFoundError(missing.getMessage());
    }
  }

  /** Which class is missing, where that is the trouble. */
  static String lacking(Throwable broken) {
    boolean lacks = broken instanceof NoClassDefFoundError && broken.getMessage() != null;
    return lacks
        ? ": it needs \"%s\", which the jar lacks; put all that it needs into the jar"
            .formatted(broken.getMessage().replace('/', '.'))
        : "; --debug shows why";
  }

  private List<String> classNames() {
    return files.keySet().stream()
        .filter(name -> name.endsWith(CLASS) && !name.endsWith("-info.class"))
        .map(name -> name.substring(0, name.length() - CLASS.length()).replace('/', '.'))
        .toList();
  }

  private WrongPlayerException wrong(String name, String what) {
    return new WrongPlayerException("the class \"%s\" in \"%s\" %s".formatted(name, file, what));
  }

  /** A player that its class makes; whatever its constructor throws comes out as it is. */
  private static Player instance(Class<?> type) {
    try {
      return (Player) type.getConstructor().newInstance();
    } catch (InvocationTargetException broken) {
      throw PlayerJar.<RuntimeException>asItIs(broken.getCause());
    } catch (ReflectiveOperationException impossible) {
      throw new IllegalStateException("the class was looked at before", impossible);
    }
  }

  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T asItIs(Throwable thrown) throws T {
    throw (T) thrown;
  }

  /** Has a player made by code of the jar, which may break down or take for ever. */
  private static Player made(JarOrigin origin, Supplier<Player> maker) {
    String who = "the player \"" + origin.name() + "\" in \"" + origin.file() + "\"";
    try {
      return TimeLimit.wait("making " + who, maker);
    } catch (WrongPlayerException told) {
      throw inJar(origin.file(), told);
    } catch (Throwable broken) {
      String why = broken instanceof LinkageError ? lacking(broken) : said(broken);
      throw new WrongPlayerException(who + " broke down while it was made" + why, broken);
    }
  }

  /** Makes one player with the usual settings, so that a broken one is known before a run. */
  void tryOut(PlayerType type) {
    tryOut(new PlayerSpec(type, Map.of()), type.origin().orElseThrow());
  }

  /** Makes a player once, so that one that cannot be made is known before a run. */
  static void tryOut(PlayerSpec spec, JarOrigin origin) {
    try {
      spec.make();
    } catch (WrongPlayerException told) {
      throw inJar(origin.file(), told);
    }
  }

  /** The same complaint, with the jar's name if it does not name it. */
  static WrongPlayerException inJar(Path file, WrongPlayerException told) {
    String name = "\"" + file + "\"";
    return told.getMessage().contains(name)
        ? told
        : new WrongPlayerException(name + ": " + told.getMessage(), told);
  }

  static String said(Throwable broken) {
    return broken.getMessage() == null
        ? "; --debug shows where"
        : ": " + broken.getMessage() + " (--debug shows where)";
  }

  /** What makes a listed player. */
  PlayerType listed(PlayerType given) {
    Function<SettingValues, Player> factory = given.factory();
    JarOrigin origin = new JarOrigin(file, digest, given.id());
    return new PlayerType(
        given.id(),
        given.description(),
        given.settings(),
        given.seesEverything(),
        values -> made(origin, () -> factory.apply(values)),
        Optional.of(origin));
  }
}
