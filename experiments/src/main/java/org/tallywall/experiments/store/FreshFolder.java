package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.tallywall.reports.results.ResultNames;

/** The folders that a run had to make, so that they can be taken away if nothing comes of it. */
final class FreshFolder {
  private static final List<String> OWN =
      List.of(ResultNames.MANIFEST, ResultNames.STUDY, ResultNames.STOP);

  private final Path target;
  private final List<Path> made;
  private final boolean fresh;

  private FreshFolder(Path target, List<Path> made, boolean fresh) {
    this.target = target;
    this.made = made;
    this.fresh = fresh;
  }

  /**
   * Makes the folders of a run as far as they are not there.
   *
   * @param target the results folder
   * @return what was made
   * @throws org.tallywall.experiments.error.FailedException if that cannot be done
   */
  static FreshFolder make(Path target) {
    Path blocks = target.resolve(ResultNames.BLOCKS).toAbsolutePath().normalize();
    List<Path> made = new ArrayList<>();
    for (Path at = blocks; at != null && !Files.exists(at); at = at.getParent()) {
      made.add(at);
    }
    Inside.refuseLink(target.resolve(ResultNames.BLOCKS));
    boolean fresh = !Files.exists(target.resolve(ResultNames.MANIFEST));
    try {
      Files.createDirectories(blocks);
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
    return new FreshFolder(target, made, fresh);
  }

  /** Takes away what was made, unless the folder was in use before or a block was kept in it. */
  void takeAwayIfEmpty() {
    try {
      Path blocks = target.resolve(ResultNames.BLOCKS);
      if (!fresh || !Files.isDirectory(blocks) || Leftovers.holdsBlocks(blocks)) {
        return;
      }
      Leftovers.deleteAll(blocks);
      for (String name : OWN) {
        Files.deleteIfExists(target.resolve(name));
      }
      for (Path path : made) {
        if (Files.isDirectory(path) && isEmpty(path)) {
          Files.delete(path);
        }
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
  }

  private static boolean isEmpty(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findFirst().isEmpty();
    }
  }
}
