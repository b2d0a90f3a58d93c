package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.tallywall.reports.results.ResultNames;

/**
 * While this is open it looks, a few times a second, whether somebody put a stop file into the
 * folder or the disk is nearly full, and then asks the run to stop.
 */
public final class FolderWatch implements AutoCloseable {
  private static final long LOOK_MILLIS = 300;

  private final Path stopFile;
  private final FreeDisk disk;
  private final Runnable stop;
  private final ScheduledExecutorService timer =
      Executors.newSingleThreadScheduledExecutor(FolderWatch::daemon);
  private volatile boolean diskNearlyFull;

  /**
   * Begins to watch.
   *
   * @param folder the results folder
   * @param disk its disk
   * @param stop stops the run
   */
  public FolderWatch(RunFolder folder, FreeDisk disk, Runnable stop) {
    this.stopFile = folder.target().resolve(ResultNames.STOP);
    this.disk = disk;
    this.stop = stop;
    timer.scheduleWithFixedDelay(this::look, 0, LOOK_MILLIS, TimeUnit.MILLISECONDS);
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "watch of the folder");
    thread.setDaemon(true);
    return thread;
  }

  private void look() {
    if (Files.isRegularFile(stopFile)) {
      stop.run();
      try {
        Files.deleteIfExists(stopFile);
      } catch (IOException staysThere) {
        // A run that goes on takes it away before it begins.
      }
    }
    if (disk.nearlyFull()) {
      diskNearlyFull = true;
      stop.run();
    }
  }

  /**
   * Whether the run was stopped because the disk is nearly full.
   *
   * @return true from then on
   */
  public boolean diskNearlyFull() {
    return diskNearlyFull;
  }

  @Override
  public void close() {
    timer.shutdownNow();
  }
}
