package org.tallywall.experiments.attack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.tallywall.experiments.cli.Keyboard;

/** Puts one attack after another to the program in this process. */
final class Lane implements AutoCloseable {
  /** Only what hangs takes so long, on however busy a machine. */
  private static final long HANGS_SECONDS = Long.getLong("attack.hangs", 60);

  private static final int FRAMES = 12;

  private final Path root;
  private Path folder;
  private Keyboard keyboard;
  private ExecutorService typist;
  private volatile Thread typing;
  private int folders;

  /**
   * A lane.
   *
   * @param root where its attacks have their folders
   */
  Lane(Path root) {
    this.root = root;
    begin();
  }

  private void begin() {
    try {
      folder = Files.createDirectories(root.resolve("in-" + folders++));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    keyboard = new Keyboard();
    typist = Executors.newSingleThreadExecutor(this::thread);
  }

  private Thread thread(Runnable work) {
    typing = new Thread(work, "typist");
    typing.setDaemon(true);
    return typing;
  }

  /** Puts an attack; whatever comes of it is in the outcome. */
  Outcome put(Attack attack) {
    Inventory.clear(folder);
    attack.plant(folder);
    Map<String, String> before = Inventory.of(folder);
    Capture out = new Capture();
    Capture err = new Capture();
    String[] words = attack.words(folder);
    Keyboard own = keyboard;
    Future<Integer> answer = typist.submit(() -> own.type(out, err, words));
    try {
      int code = answer.get(HANGS_SECONDS, TimeUnit.SECONDS);
      return new Outcome(code, out, err, null, "", before, Inventory.of(folder));
    } catch (TimeoutException hangs) {
      String stuck = where(typing.getStackTrace());
      giveUp();
      return new Outcome(
          Outcome.NO_CODE, new Capture(), new Capture(), null, stuck, before, before);
    } catch (ExecutionException thrown) {
      Map<String, String> after = Inventory.of(folder);
      return new Outcome(Outcome.NO_CODE, out, err, thrown.getCause(), "", before, after);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  static String where(StackTraceElement[] trace) {
    return Arrays.stream(trace)
        .limit(FRAMES)
        .map(StackTraceElement::toString)
        .collect(Collectors.joining(" < "));
  }

  /** Leaves what hangs to itself and goes on elsewhere. */
  private void giveUp() {
    typist.shutdownNow();
    begin();
  }

  @Override
  public void close() {
    typist.shutdownNow();
  }
}
