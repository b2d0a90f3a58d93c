package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.text.Sha256;
import org.tallywall.experiments.study.Source;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.reports.results.ResultNames;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * How far a run is and where its results came from: it alone holds what differs from one machine or
 * hour to another. Immutable.
 */
public final class Manifest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final String STATE = "state";
  private static final String PAPERS = "papers";
  private static final String PROVISIONAL = "provisional";
  private static final String CHANGED_TO = "deals-changed-to";

  /** A manifest has some thousand bytes. */
  private static final long MOST_BYTES = 16L << 20;

  private static final String VERSION = "tallywall";
  private static final List<String> IDENTITY =
      List.of(VERSION, "stream-version", "study-digest", "card-digest", "rules-digest", "seed");

  private final Map<String, Object> fields;

  private Manifest(Map<String, Object> fields) {
    this.fields = Collections.unmodifiableMap(fields);
  }

  /** How far a run is. */
  public enum State {
    /** It is going on, or its process died. */
    RUNNING,
    /** It was stopped and can be resumed. */
    STOPPED,
    /** All results are there. */
    COMPLETE;

    /**
     * The word in the file.
     *
     * @return as in {@code running}
     */
    public String text() {
      return switch (this) {
        case RUNNING -> "running";
        case STOPPED -> "stopped";
        case COMPLETE -> "complete";
      };
    }
  }

  /**
   * What was done.
   *
   * @param deals deals played, those set aside included
   * @param games games counted
   * @param faults deals set aside
   */
  public record Done(long deals, long games, long faults) {
    /** Nothing yet. */
    public static final Done NOTHING = new Done(0, 0, 0);
  }

  /**
   * A run that begins.
   *
   * @param study the study
   * @param version the program's version
   * @param command the words typed
   * @param threads how many threads play
   * @param start when it began
   * @return its manifest
   */
  public static Manifest begin(
      Study study, String version, List<String> command, int threads, Instant start) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put(STATE, State.RUNNING.text());
    fields.put(VERSION, version);
    fields.put("stream-version", StreamKey.STREAM_VERSION);
    fields.put("study", study.question().name());
    fields.put("study-file", study.source().study().toString());
    fields.put("study-digest", study.digest());
    fields.put("card", study.card().name());
    fields.put("card-file", study.source().card().toString());
    fields.put("card-digest", study.card().digest());
    fields.put("rules-digest", StudyJson.digest(study.rules()));
    if (!study.jars().isEmpty()) {
      fields.put("jars", study.jars());
    }
    if (study.source().derived()) {
      fields.put("derived", derived(study.source()));
    }
    fields.put("seed", study.extent().seed());
    if (study.extent().changed()) {
      fields.put(CHANGED_TO, study.extent().deals());
    }
    fields.put("deals", 0);
    fields.put("games", 0);
    fields.put("faults", 0);
    fields.put("threads", threads);
    fields.put("start", time(start));
    fields.put("java", System.getProperty("java.vendor") + " " + Runtime.version());
    fields.put("machine", machine());
    fields.put("command", List.copyOf(command));
    return new Manifest(fields);
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

  private static String time(Instant moment) {
    return moment.truncatedTo(ChronoUnit.SECONDS).toString();
  }

  /**
   * Reads a manifest.
   *
   * @param folder the results folder
   * @return the manifest; empty where there is none that can be read
   */
  public static Optional<Manifest> read(Path folder) {
    try {
      Path file = folder.resolve(ResultNames.MANIFEST);
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        return Optional.empty();
      }
      String text = Files.readString(file, StandardCharsets.UTF_8);
      if (!(MAPPER.readValue(text, Object.class) instanceof Map<?, ?> read)) {
        return Optional.empty();
      }
      Map<String, Object> fields = new LinkedHashMap<>();
      read.forEach((name, value) -> fields.put((String) name, value));
      return Optional.of(new Manifest(fields)).filter(manifest -> manifest.state() != null);
    } catch (IOException | JacksonException | NumberFormatException unreadable) {
      return Optional.empty();
    }
  }

  /**
   * The run as one that goes on after an earlier part.
   *
   * @param earlier the manifest of the earlier part
   * @return this manifest with the start of the first part and one part more
   */
  public Manifest after(Manifest earlier) {
    Map<String, Object> changed = new LinkedHashMap<>(fields);
    changed.put("start", earlier.text("start"));
    changed.put("resumed", earlier.number("resumed") + 1);
    return new Manifest(changed);
  }

  /**
   * The run at a later moment.
   *
   * @param state how far it is
   * @param done what was done
   * @param end the moment
   * @return the manifest with these
   */
  public Manifest with(State state, Done done, Instant end) {
    Map<String, Object> changed = new LinkedHashMap<>(fields);
    changed.put(STATE, state.text());
    changed.put("deals", done.deals());
    changed.put("games", done.games());
    changed.put("faults", done.faults());
    changed.put("end", time(end));
    return new Manifest(changed);
  }

  /**
   * The run with the files of its results.
   *
   * @param files their names
   * @return the manifest with these
   */
  public Manifest with(List<String> files) {
    Map<String, Object> changed = new LinkedHashMap<>(fields);
    changed.put("files", List.copyOf(files));
    return new Manifest(changed);
  }

  /**
   * What stands beside figures that were written before the run was complete.
   *
   * @param done what the figures count
   * @param files the files that hold them
   * @return the manifest with these; it says no more of the run itself than before
   */
  public Manifest provisional(Done done, List<String> files) {
    Map<String, Object> counted = new LinkedHashMap<>();
    counted.put("deals", done.deals());
    counted.put("games", done.games());
    counted.put("faults", done.faults());
    Map<String, Object> changed = new LinkedHashMap<>(with(files).fields);
    changed.remove(PAPERS);
    changed.put(PROVISIONAL, counted);
    return new Manifest(changed);
  }

  /**
   * Whether a complete run is all that another asks for.
   *
   * @param wanted the other run, of the same study
   * @return false where the number of deals is to become another
   */
  boolean answers(Manifest wanted) {
    return wanted.number(CHANGED_TO) == 0 || number(CHANGED_TO) == wanted.number(CHANGED_TO);
  }

  /**
   * How far the run is.
   *
   * @return null where the file does not say
   */
  public State state() {
    return Arrays.stream(State.values())
        .filter(state -> state.text().equals(fields.get(STATE)))
        .findFirst()
        .orElse(null);
  }

  /**
   * The files of the results, as far as they have been announced.
   *
   * @return their names
   */
  public List<String> files() {
    return fields.get("files") instanceof List<?> names
        ? names.stream().map(String::valueOf).toList()
        : List.of();
  }

  /**
   * The digests of the papers that were made of the results.
   *
   * @return by their names in the folder
   */
  Map<String, String> papers() {
    Map<String, String> papers = new TreeMap<>();
    if (fields.get(PAPERS) instanceof Map<?, ?> written) {
      written.forEach((name, digest) -> papers.put(String.valueOf(name), String.valueOf(digest)));
    }
    return papers;
  }

  /**
   * The same run with other papers.
   *
   * @param papers their digests by their names
   * @return a changed manifest
   */
  Manifest withPapers(Map<String, String> papers) {
    Map<String, Object> changed = new LinkedHashMap<>(fields);
    changed.put(PAPERS, new TreeMap<>(papers));
    return new Manifest(changed);
  }

  /**
   * A field as text.
   *
   * @param name its name
   * @return its text, or "?" where it is missing
   */
  public String text(String name) {
    Object value = fields.get(name);
    return value == null ? "?" : value.toString();
  }

  /**
   * A field as a number.
   *
   * @param name its name
   * @return the number, or 0 where it is missing
   */
  public long number(String name) {
    return fields.get(name) instanceof Number number ? number.longValue() : 0;
  }

  /**
   * The jars of players.
   *
   * @return the digest of each by its file's name
   */
  public Map<String, String> jars() {
    Map<String, String> jars = new TreeMap<>();
    if (fields.get("jars") instanceof Map<?, ?> played) {
      played.forEach((name, digest) -> jars.put(String.valueOf(name), String.valueOf(digest)));
    }
    return jars;
  }

  /**
   * The fields that must agree for one run to be a part of another and do not.
   *
   * @param other the other run
   * @return their names
   */
  List<String> differing(Manifest other) {
    return IDENTITY.stream().filter(name -> !text(name).equals(other.text(name))).toList();
  }

  /**
   * The digest of all that must agree for one run to be a part of another. It stands in the file of
   * every block.
   *
   * @return 32 bytes
   */
  public byte[] digest() {
    StringBuilder all = new StringBuilder();
    IDENTITY.forEach(name -> all.append(name).append(' ').append(text(name)).append('\n'));
    String digest = Sha256.of(all.toString().getBytes(StandardCharsets.UTF_8));
    return HexFormat.of().parseHex(digest, digest.indexOf(':') + 1, digest.length());
  }

  /**
   * The manifest as a file.
   *
   * @return lines of JSON
   */
  public String json() {
    return StudyJson.pretty(fields);
  }
}
