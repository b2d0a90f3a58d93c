package org.tallywall.experiments.school;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.tallywall.core.card.Card;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.text.FileLimits;
import org.tallywall.core.text.TextFile;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.study.StudyJson;

/**
 * The folder in which the decisions looked at are kept: what was asked, and a line for each
 * decision as soon as it is known. Whatever ended it, the same question goes on there.
 */
public final class SchoolFolder {
  /** What was asked. */
  private static final String ASKED = "school.json";

  /** The decisions. */
  private static final String DECISIONS = "school.csv";

  private final Path folder;
  private final String asked;

  /**
   * A folder.
   *
   * @param folder the folder, whether it is there or not
   * @param question what is asked
   * @param players who plays, as a study would write them, East's first
   */
  public SchoolFolder(Path folder, SchoolQuestion question, List<Object> players) {
    this.folder = folder;
    this.asked = asked(question, players);
  }

  private static String asked(SchoolQuestion question, List<Object> players) {
    Card card = question.setup().hands().card();
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("card", card.name());
    fields.put("card-digest", card.digest());
    fields.put("rules", question.setup().rules().switches());
    fields.put("players", players);
    fields.put("seed", question.seed());
    fields.put("games", question.games());
    fields.put("each", question.each());
    fields.put("worlds", question.worlds());
    fields.put("streams", StreamKey.STREAM_VERSION);
    return StudyJson.pretty(fields);
  }

  /**
   * The folder itself.
   *
   * @return its path
   */
  public Path path() {
    return folder;
  }

  /**
   * Looks whether the folder can be used, before any work is done.
   *
   * @throws WrongInputException if something else lies there
   */
  public void check() {
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS) || isEmpty()) {
      return;
    }
    Path file = folder.resolve(ASKED);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new WrongInputException(
          "\"%s\" is there already and holds something else; name another folder with --out"
              .formatted(folder));
    } else if (!TextFile.read(file).equals(asked)) {
      throw new WrongInputException(
          "\"%s\" holds decisions of another card, other rules or players, or with another seed or other numbers; name another folder with --out"
              .formatted(folder));
    }
  }

  private boolean isEmpty() {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findFirst().isEmpty();
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** The decisions that are there already. */
  List<Judged> read() {
    Path file = folder.resolve(DECISIONS);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    byte[] bytes = TextFile.bytes(file, FileLimits.LARGEST_FILE);
    return SchoolFile.read(new String(bytes, StandardCharsets.UTF_8));
  }

  /**
   * Goes on where it was: reads what is there and fits, and puts whole lines alone in the file.
   *
   * @param school what draws the decisions
   * @param counts what was counted
   * @return the decisions looked at before, in their order
   */
  public List<Judged> begin(School school, Counts counts) {
    List<Judged> done = new ArrayList<>();
    for (Judged one : read()) {
      if (!school.fits(counts, one)) {
        break;
      }
      done.add(one);
    }
    WholeFile.folder(folder);
    WholeFile.write(folder.resolve(ASKED), asked);
    StringBuilder text = new StringBuilder(SchoolFile.head());
    done.forEach(one -> text.append(SchoolFile.line(one)));
    WholeFile.write(folder.resolve(DECISIONS), text.toString());
    return done;
  }

  /**
   * Adds a decision.
   *
   * @param one the decision
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public void add(Judged one) {
    Path file = folder.resolve(DECISIONS);
    try (OutputStream out =
        Files.newOutputStream(file, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS)) {
      out.write(SchoolFile.line(one).getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw WholeFile.unwritten(file, e);
    }
  }

  /**
   * Whether a paper is there.
   *
   * @param name its name in the folder
   * @return true if a file of that name is there
   */
  public boolean has(String name) {
    return Files.exists(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Writes a paper.
   *
   * @param name its name in the folder, perhaps with that of a folder in it
   * @param text its text
   * @throws org.tallywall.experiments.error.FailedException if it cannot be written
   */
  public void write(String name, String text) {
    Path file = folder.resolve(name);
    WholeFile.folder(file.getParent());
    WholeFile.write(file, text);
  }
}
