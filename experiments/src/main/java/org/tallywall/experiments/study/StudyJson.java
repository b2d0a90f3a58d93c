package org.tallywall.experiments.study;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.Sha256;
import org.tallywall.reports.results.PrettyJson;
import org.tallywall.strategies.catalog.PlayerSpec;
import tools.jackson.databind.json.JsonMapper;

/** Writes a study as a study file with every default written out. */
public final class StudyJson {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /** The field for the number of deals that was fixed before another took its place. */
  public static final String FIRST_PLANNED = "first-planned";

  private StudyJson() {}

  /**
   * The study as a file for a folder, with its paths made to hold from there.
   *
   * @param study the study
   * @param folder the folder in which the file will lie
   * @return lines of JSON, each ended by {@code \n}
   */
  public static String text(Study study, Path folder) {
    Map<String, Object> fields =
        fields(
            study,
            pathFrom(folder, study.source().card()),
            player -> PlayerJson.text(player, folder));
    fields.putAll(study.design().telling(study.card()));
    if (study.extent().changed()) {
      fields.put("deals", study.extent().deals());
      fields.put(FIRST_PLANNED, study.extent().planned());
    }
    fields.put("failed-deals-allowed", study.extent().patience().faultsBorne());
    fields.put("decision-seconds", study.extent().patience().decisionSeconds());
    return pretty(fields);
  }

  /**
   * Any JSON for people to read.
   *
   * @param value maps, lists, texts, numbers
   * @return lines, each ended by {@code \n}
   */
  public static String pretty(Object value) {
    return PrettyJson.text(value);
  }

  /**
   * The digest of some rules.
   *
   * @param rules the rules
   * @return "sha256:" and 64 hexadecimal digits
   */
  public static String digest(TableRules rules) {
    return digest((Object) rules.switches());
  }

  /**
   * The digest of a player with all its settings, whatever it is called.
   *
   * @param player the player
   * @return "sha256:" and 64 hexadecimal digits
   */
  public static String digest(PlayerSpec player) {
    return digest(PlayerJson.identity(player));
  }

  static String digest(Study study) {
    return digest((Object) fields(study, study.card().digest(), PlayerJson::identity));
  }

  private static String digest(Object value) {
    return Sha256.of(MAPPER.writeValueAsString(value).getBytes(StandardCharsets.UTF_8));
  }

  /** All on which numbers depend. */
  private static Map<String, Object> fields(
      Study study, String card, Function<PlayerSpec, Object> player) {
    StudyQuestion question = study.question();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("study", question.name());
    fields.put("question", question.words());
    fields.put("card", card);
    fields.put("rules", study.rules().switches());
    fields.put("seed", study.extent().seed());
    fields.putAll(study.design().fields(player));
    question.primary().ifPresent(measure -> fields.put("primary", measure.text()));
    fields.put("secondary", question.secondary().stream().map(Measure::text).toList());
    boolean rate = question.primary().map(Measure::isRate).orElse(false);
    study
        .extent()
        .until()
        .ifPresentOrElse(
            until -> fields.put("until", DesignJson.until(until, !rate)),
            () -> fields.put("deals", study.extent().planned()));
    fields.put("confidence", DesignJson.shortest(question.confidence()));
    fields.put("records", study.extent().records());
    return fields;
  }

  /** A path that holds from a folder, with forward slashes; absolute where there is no other. */
  static String pathFrom(Path folder, Path file) {
    Path from = folder.toAbsolutePath().normalize();
    Path to = file.toAbsolutePath().normalize();
    boolean sameDrive = from.getRoot() != null && from.getRoot().equals(to.getRoot());
    Path path = sameDrive ? from.relativize(to) : to;
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
