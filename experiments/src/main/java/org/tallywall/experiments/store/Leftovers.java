package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.tallywall.reports.results.ResultNames;

/** Takes away what earlier runs left in a folder; whatever else lies there stays. */
final class Leftovers {
  private Leftovers() {}

  /**
   * Clears a folder for a run.
   *
   * @param target the results folder
   * @param files the results that an earlier run had announced
   * @param blocksToo whether the blocks go, too
   * @return papers that somebody had worked on and that were kept, a sentence each
   * @throws IOException if something cannot be deleted
   */
  static List<String> clear(Path target, List<String> files, boolean blocksToo) throws IOException {
    for (String name : files) {
      delete(target, name);
      delete(target, name + WholeFile.PART);
    }
    PaperShelf papers = PaperShelf.in(target);
    papers.clear();
    for (String papersBelow : List.of(ResultNames.CHARTS, ResultNames.GAMES)) {
      Inside.deleteFiles(target.resolve(papersBelow), "*" + WholeFile.PART);
    }
    if (Files.isRegularFile(target.resolve(ResultNames.STOP))) {
      Files.delete(target.resolve(ResultNames.STOP));
    }
    Files.deleteIfExists(target.resolve(ResultNames.STUDY + WholeFile.PART));
    Path blocks = target.resolve(ResultNames.BLOCKS);
    Inside.deleteFiles(blocks, "*" + WholeFile.PART);
    if (blocksToo) {
      Inside.deleteFiles(blocks, "*" + BlockStore.ENDING);
    }
    return papers.kept();
  }

  private static void delete(Path target, String name) throws IOException {
    Optional<Path> file = Inside.file(target, name);
    if (file.isPresent() && !Files.isDirectory(file.get(), LinkOption.NOFOLLOW_LINKS)) {
      Files.deleteIfExists(file.get());
    }
  }

  /** Whether at least one block is kept in a folder. */
  static boolean holdsBlocks(Path blocks) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(blocks, "*" + BlockStore.ENDING)) {
      return files.iterator().hasNext();
    }
  }

  /** Deletes a folder of files. */
  static void deleteAll(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
