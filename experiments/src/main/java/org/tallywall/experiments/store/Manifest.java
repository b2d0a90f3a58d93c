package org.tallywall.experiments.store;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.study.Source;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;

/**
 * Where results came from: it alone holds what differs from one machine or hour to another.
 *
 * @param version the program's version
 * @param command the words typed
 * @param threads how many threads played
 * @param start when the run began
 * @param end when it ended
 */
public record Manifest(
    String version, List<String> command, int threads, Instant start, Instant end) {
  /**
   * Copies the words.
   *
   * @param version the program's version
   * @param command the words typed
   * @param threads how many threads played
   * @param start when the run began
   * @param end when it ended
   */
  public Manifest {
    command = List.copyOf(command);
  }

  /**
   * The manifest as a file.
   *
   * @param study the study
   * @param deals deals played
   * @param games games played
   * @return lines of JSON
   */
  public String text(Study study, long deals, long games) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("tallywall", version);
    fields.put("stream-version", StreamKey.STREAM_VERSION);
    fields.put("study", study.question().name());
    fields.put("study-file", study.source().study().toString());
    fields.put("study-digest", study.digest());
    fields.put("card", study.card().name());
    fields.put("card-file", study.source().card().toString());
    fields.put("card-digest", study.card().digest());
    fields.put("rules-digest", StudyJson.digest(study.rules()));
    if (study.source().derived()) {
      fields.put("derived", derived(study.source()));
    }
    fields.put("seed", study.extent().seed());
    fields.put("deals", deals);
    fields.put("games", games);
    fields.put("faults", 0);
    fields.put("threads", threads);
    fields.put("start", start.truncatedTo(ChronoUnit.SECONDS).toString());
    fields.put("end", end.truncatedTo(ChronoUnit.SECONDS).toString());
    fields.put("java", System.getProperty("java.vendor") + " " + Runtime.version());
    fields.put("machine", machine());
    fields.put("command", command);
    return StudyJson.pretty(fields);
  }

  private static Map<String, Object> derived(Source source) {
    Map<String, Object> given = new LinkedHashMap<>();
    source.givenCard().ifPresent(card -> given.put("card", card.toString()));
    source.givenRules().ifPresent(rules -> given.put("rules", rules.toString()));
    return given;
  }

  private static String machine() {
    return System.getProperty("os.name")
        + " "
        + System.getProperty("os.version")
        + " "
        + System.getProperty("os.arch")
        + ", "
        + Runtime.getRuntime().availableProcessors()
        + " processors";
  }
}
