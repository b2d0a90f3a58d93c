package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.tallywall.experiments.study.StudyJson;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Says in words why a run is no part of another. */
final class ManifestDifferences {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final int SHORT = 60;

  /** Fields of a study on which no number depends, and the card, whose digest is compared. */
  private static final Set<String> NO_MATTER =
      Set.of("card", "failed-deals-allowed", "decision-seconds", StudyJson.FIRST_PLANNED);

  private ManifestDifferences() {}

  /**
   * What differs.
   *
   * @param there the run in the folder
   * @param now the run that is wanted
   * @param file the study file of the former
   * @param study the study of the latter as a file
   * @return a phrase each; empty where the one can go on with the other
   */
  static List<String> between(Manifest there, Manifest now, Path file, String study) {
    List<String> phrases = new ArrayList<>();
    List<String> names = there.differing(now);
    for (String name : names) {
      switch (name) {
        case "tallywall" -> phrases.add(phrase("the program's version", name, there, now));
        case "stream-version" ->
            phrases.add(phrase("the version of the random streams", name, there, now));
        case "card-digest" ->
            phrases.add(
                there.text("card").equals(now.text("card"))
                    ? "the card \"" + now.text("card") + "\" has been changed"
                    : phrase("the card", "card", there, now));
        default -> {
          // The fields of the study say more than their digests.
        }
      }
    }
    if (!names.isEmpty()) {
      phrases.addAll(ofJars(there.jars(), now.jars()));
      phrases.addAll(ofStudies(read(file), MAPPER.readValue(study, Map.class)));
    }
    return !names.isEmpty() && phrases.isEmpty() ? List.of("the study") : phrases;
  }

  private static List<String> ofJars(Map<String, String> there, Map<String, String> now) {
    return now.keySet().stream()
        .filter(name -> there.containsKey(name) && !now.get(name).equals(there.get(name)))
        .map(name -> "the jar \"" + name + "\" holds other players than when it was played")
        .toList();
  }

  /** The fields of a study file; none where it cannot be read. */
  static Map<?, ?> read(Path file) {
    try {
      Object read = MAPPER.readValue(Files.readString(file, StandardCharsets.UTF_8), Object.class);
      return read instanceof Map<?, ?> fields ? fields : Map.of();
    } catch (IOException | JacksonException | NumberFormatException unreadable) {
      return Map.of();
    }
  }

  private static String phrase(String what, String name, Manifest there, Manifest now) {
    return what + " (there " + there.text(name) + ", now " + now.text(name) + ")";
  }

  private static List<String> ofStudies(Map<?, ?> there, Map<?, ?> now) {
    Set<Object> names = new LinkedHashSet<>(now.keySet());
    names.addAll(there.keySet());
    List<String> phrases = new ArrayList<>();
    for (Object name : names) {
      boolean same = Objects.equals(there.get(name), now.get(name));
      boolean changed = name.equals("deals") && now.containsKey(StudyJson.FIRST_PLANNED);
      if (!same && !changed && !NO_MATTER.contains(name.toString())) {
        phrases.add(field(name.toString(), there.get(name), now.get(name)));
      }
    }
    return phrases;
  }

  private static String field(String name, Object there, Object now) {
    String before = there == null ? "nothing" : there.toString();
    String after = now == null ? "nothing" : now.toString();
    boolean brief = before.length() <= SHORT && after.length() <= SHORT;
    return "\"" + name + "\"" + (brief ? " (there " + before + ", now " + after + ")" : "");
  }
}
