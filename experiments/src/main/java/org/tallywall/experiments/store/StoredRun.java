package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.reports.results.ResultNames;

/**
 * What the blocks in a results folder say of the run that they belong to. Each carries the run's
 * digest and a digest of itself, so they can be believed where the manifest cannot.
 */
final class StoredRun {
  private StoredRun() {}

  /**
   * Whether blocks of a run are stored.
   *
   * @param target the results folder
   * @param run the digest of the run, 32 bytes
   * @return true if at least one whole block belongs to it
   */
  static boolean holds(Path target, byte[] run) {
    Path blocks = target.resolve(ResultNames.BLOCKS);
    if (!Files.isDirectory(blocks, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(blocks, "*" + BlockStore.ENDING)) {
      for (Path file : files) {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
            && Arrays.equals(run, Checkpoint.run(Files.readAllBytes(file)))) {
          return true;
        }
      }
      return false;
    } catch (IOException e) {
      throw new FailedException("\"" + blocks + "\" cannot be looked into", e);
    }
  }
}
