package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.reports.results.ResultNames;

/**
 * The folder inside a results folder for what a run shows before it is complete. It is laid out as
 * a results folder, its manifest says that its figures are provisional, and it goes when the run is
 * complete or starts over. Nothing outside it is touched, so a run may go on meanwhile.
 */
public final class EarlyFolder {
  /** Its name in the results folder. */
  public static final String NAME = "provisional";

  private EarlyFolder() {}

  /**
   * Fills the folder in place of what an earlier look had written.
   *
   * @param target the results folder
   * @param study the study as a file for the folder
   * @param manifest says what the figures count
   * @param files what fills each file, by its name, in the order of writing
   * @return papers of an earlier look that somebody had worked on and that were kept, a sentence
   *     each
   * @throws FailedException if it cannot be written
   */
  public static List<String> fill(
      Path target, String study, Manifest manifest, Map<String, WholeFile.Filler> files) {
    Path folder = place(target);
    WholeFile.folder(folder);
    try {
      List<String> kept = clear(folder);
      WholeFile.write(folder.resolve(ResultNames.STUDY), study);
      files.forEach((name, filler) -> WholeFile.grow(folder.resolve(name), filler));
      WholeFile.write(folder.resolve(ResultNames.MANIFEST), manifest.json());
      return kept;
    } catch (IOException e) {
      throw WholeFile.unwritten(folder, e);
    }
  }

  /**
   * The place of the folder.
   *
   * @param target the results folder
   * @return its path, whether it exists or not
   */
  public static Path place(Path target) {
    return target.resolve(NAME);
  }

  /** Takes the folder away, but for papers that somebody has worked on. */
  static List<String> takeAway(Path target) throws IOException {
    Path folder = place(target);
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    List<String> kept = clear(folder);
    for (String name : List.of(ResultNames.CHARTS, ResultNames.GAMES)) {
      deleteIfEmpty(folder.resolve(name));
    }
    deleteIfEmpty(folder);
    return kept;
  }

  /** Deletes what an earlier look had written; a folder that says nothing of it stays as it is. */
  private static List<String> clear(Path folder) throws IOException {
    Optional<Manifest> earlier = Manifest.read(folder);
    if (earlier.isEmpty()) {
      return List.of();
    }
    List<String> kept = new ArrayList<>();
    for (String sentence : Leftovers.clear(folder, earlier.get().files(), false)) {
      kept.add("in " + NAME + ": " + sentence);
    }
    Files.deleteIfExists(folder.resolve(ResultNames.MANIFEST));
    Files.deleteIfExists(folder.resolve(ResultNames.STUDY));
    return kept;
  }

  private static void deleteIfEmpty(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    boolean empty;
    try (Stream<Path> inside = Files.list(folder)) {
      empty = inside.findFirst().isEmpty();
    }
    if (empty) {
      Files.delete(folder);
    }
  }
}
