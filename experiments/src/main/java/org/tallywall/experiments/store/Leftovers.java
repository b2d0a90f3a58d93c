package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.tallywall.reports.results.ResultNames;

/** Takes away what earlier runs left in a folder; whatever else lies there stays. */
final class Leftovers {
  /** Made of the results, so they go with them. */
  private static final List<String> PAPERS =
      List.of(ResultNames.REPORT, ResultNames.NOTES, ResultNames.NOTES_PAGE);

  private Leftovers() {}

  /**
   * Clears a folder for a run.
   *
   * @param target the results folder
   * @param files the results that an earlier run had announced
   * @param blocksToo whether the blocks go, too
   * @throws IOException if something cannot be deleted
   */
  static void clear(Path target, List<String> files, boolean blocksToo) throws IOException {
    Path home = target.toAbsolutePath().normalize();
    for (String name : files) {
      Path file = home.resolve(name).normalize();
      if (file.startsWith(home) && !file.equals(home)) {
        Files.deleteIfExists(file);
        Files.deleteIfExists(file.resolveSibling(file.getFileName() + WholeFile.PART));
      }
    }
    for (String paper : PAPERS) {
      Files.deleteIfExists(target.resolve(paper));
    }
    Files.deleteIfExists(target.resolve(ResultNames.STOP));
    Files.deleteIfExists(target.resolve(ResultNames.STUDY + WholeFile.PART));
    Path blocks = target.resolve(ResultNames.BLOCKS);
    deleteEnding(blocks, WholeFile.PART);
    if (blocksToo) {
      deleteEnding(blocks, BlockStore.ENDING);
    }
  }

  private static void deleteEnding(Path folder, String ending) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ending)) {
      for (Path file : files) {
        Files.delete(file);
      }
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
