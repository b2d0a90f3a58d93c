package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongSupplier;
import org.tallywall.experiments.error.FailedException;

/** Looks whether the disk has room for a run. */
public final class FreeDisk {
  /** Bytes that are to stay free, 32 MiB. */
  public static final long RESERVE = 32L << 20;

  private static final long MIB = 1L << 20;

  private final Path folder;
  private final LongSupplier free;

  FreeDisk(Path folder, LongSupplier free) {
    this.folder = folder;
    this.free = free;
  }

  /**
   * The disk of a folder.
   *
   * @param folder the folder, which may be yet to come
   * @return its disk
   */
  public static FreeDisk of(Path folder) {
    Path there = folder.toAbsolutePath().normalize();
    while (!Files.exists(there)) {
      there = there.getParent();
    }
    Path existing = there;
    return new FreeDisk(folder, () -> usable(existing));
  }

  /** Bytes free; a disk that does not tell counts as large. */
  private static long usable(Path folder) {
    try {
      FileStore disk = Files.getFileStore(folder);
      long bytes = disk.getUsableSpace();
      return bytes < 0 || disk.getTotalSpace() <= 0 ? Long.MAX_VALUE : bytes;
    } catch (IOException silent) {
      return Long.MAX_VALUE;
    }
  }

  /**
   * Bytes free.
   *
   * @return 0 or more
   */
  public long free() {
    return free.getAsLong();
  }

  /**
   * Whether a run had better stop.
   *
   * @return true when less than the reserve is free
   */
  public boolean nearlyFull() {
    return free() < RESERVE;
  }

  /**
   * Refuses a run for which there is no room.
   *
   * @param needed bytes that it will need
   * @throws FailedException if they are not free beside the reserve
   */
  public void check(long needed) {
    long there = free();
    if (there - RESERVE < needed) {
      throw new FailedException(
          "the disk of \"%s\" has %s MiB free and the run needs about %s MiB; make room, or name another folder with --out"
              .formatted(folder, there / MIB, (needed + RESERVE) / MIB + 1));
    }
  }
}
