package org.tallywall.strategies.jar;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeSet;
import org.tallywall.strategies.catalog.PlayerSource;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.catalog.WrongPlayerException;
import org.tallywall.strategies.setting.Setting;

/** Reads the list of players that a jar may hold. */
final class JarList {
  /** The file in a jar that names its list of players. */
  static final String FILE = "META-INF/services/" + PlayerSource.class.getName();

  private final PlayerJar jar;
  private final JarLoader loader;

  JarList(PlayerJar jar, JarLoader loader) {
    this.jar = jar;
    this.loader = loader;
  }

  List<PlayerType> players() {
    List<PlayerType> players = new ArrayList<>();
    Set<String> ids = new TreeSet<>();
    for (PlayerType given : given()) {
      if (given == null) {
        throw wrong("it holds an empty entry");
      }
      PlayerType type = jar.listed(given);
      if (!ids.add(type.id())) {
        throw wrong("two of its players are called \"" + type.id() + "\"");
      }
      checkSettings(type);
      jar.tryOut(type);
      players.add(type);
    }
    return List.copyOf(players);
  }

  private List<PlayerType> given() {
    try {
      return TimeLimit.wait("the list of players in \"" + jar.file() + "\"", this::found);
    } catch (WrongPlayerException told) {
      throw PlayerJar.inJar(jar.file(), told);
    } catch (ServiceConfigurationError broken) {
      Throwable cause = broken.getCause();
      throw new WrongPlayerException(
          message(
              cause == null
                  ? "a class named in it is missing, is not a list of players or has no public"
                      + " constructor without parameters; --debug shows which"
                  : "it broke down" + PlayerJar.said(cause)),
          broken);
    } catch (LinkageError broken) {
      throw new WrongPlayerException(message("it broke down" + PlayerJar.lacking(broken)), broken);
    } catch (Throwable broken) {
      throw new WrongPlayerException(message("it broke down" + PlayerJar.said(broken)), broken);
    }
  }

  private List<PlayerType> found() {
    List<PlayerType> given = new ArrayList<>();
    for (ServiceLoader.Provider<PlayerSource> found :
        ServiceLoader.load(PlayerSource.class, loader).stream().toList()) {
      if (found.type().getClassLoader() == loader) {
        given.addAll(found.get().players());
      }
    }
    return given;
  }

  private void checkSettings(PlayerType type) {
    Set<String> names = new TreeSet<>();
    for (Setting<?> setting : type.settings()) {
      if (!names.add(setting.name())) {
        throw wrong("\"%s\" has the setting \"%s\" twice".formatted(type.id(), setting.name()));
      }
      if (!setting.allows(setting.standard())) {
        throw wrong(
            "the usual value of \"%s\" of \"%s\" is not %s"
                .formatted(setting.name(), type.id(), setting.range()));
      }
    }
  }

  private WrongPlayerException wrong(String what) {
    return new WrongPlayerException(message(what));
  }

  private String message(String what) {
    return "the list of players in \"%s\" (%s) cannot be used: %s"
        .formatted(jar.file(), FILE, what);
  }
}
