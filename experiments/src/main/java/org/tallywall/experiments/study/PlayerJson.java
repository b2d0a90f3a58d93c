package org.tallywall.experiments.study;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.tallywall.strategies.catalog.JarOrigin;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.setting.Setting;

/** Writes players with every setting under its full name. */
final class PlayerJson {
  private static final String PLAYER = "player";

  private PlayerJson() {}

  /** All on which the play depends; a player from a jar counts by what the jar holds. */
  static Object identity(PlayerSpec spec) {
    Optional<JarOrigin> origin = spec.type().origin();
    if (spec.type().settings().isEmpty() && origin.isEmpty()) {
      return spec.written();
    }
    Map<String, Object> written = settings(spec, spec.type().id());
    origin.ifPresent(jar -> written.put("jar", jar.digest()));
    return written;
  }

  /** The player for a study file in a folder, the way to its jar made to hold from there. */
  static Object text(PlayerSpec spec, Path folder) {
    String word =
        spec.type()
            .origin()
            .map(jar -> jar.word(StudyJson.pathFrom(folder, jar.file())))
            .orElse(spec.type().id());
    return spec.type().settings().isEmpty() ? word : settings(spec, word);
  }

  private static Map<String, Object> settings(PlayerSpec spec, String word) {
    Map<String, Object> written = new LinkedHashMap<>();
    written.put(PLAYER, word);
    for (Setting<?> setting : spec.type().settings()) {
      Object value = spec.value(setting);
      written.put(
          setting.name(), value instanceof BigDecimal number ? Setting.plain(number) : value);
    }
    return written;
  }
}
