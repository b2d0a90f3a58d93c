package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps a second run out of a folder. The lock belongs to the process and vanishes with it, however
 * it ends; the empty file that stays behind means nothing.
 */
final class RunLock implements AutoCloseable {
  private final FileChannel channel;

  private RunLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes a lock.
   *
   * @param file the file that stands for it
   * @return the lock, or null where another run holds it
   * @throws IOException if the file cannot be written or the file system knows no locks
   */
  static RunLock take(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    boolean taken = false;
    try {
      FileLock lock = channel.tryLock();
      taken = lock != null;
      return taken ? new RunLock(channel) : null;
    } catch (OverlappingFileLockException heldByThisProcess) {
      return null;
    } finally {
      if (!taken) {
        channel.close();
      }
    }
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
