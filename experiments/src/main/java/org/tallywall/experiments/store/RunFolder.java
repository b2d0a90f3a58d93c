package org.tallywall.experiments.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;

/**
 * The folder of a run's results. It grows under another name beside its place and takes its own
 * name when it is complete, so nothing half-written is ever met under that name.
 */
public final class RunFolder implements AutoCloseable {
  private final Path target;
  private final Path growing;
  private final boolean newParent;
  private boolean complete;

  private RunFolder(Path target, Path growing, boolean newParent) {
    this.target = target;
    this.growing = growing;
    this.newParent = newParent;
  }

  /**
   * Begins a folder. Nothing under its own name is touched yet.
   *
   * @param target the folder's place
   * @param onExisting what to do when there is one already; an empty one counts as new
   * @return the folder, to be closed
   * @throws WrongInputException if it is there and may not be replaced
   * @throws FailedException if nothing can be written there
   */
  public static RunFolder begin(Path target, OnExisting onExisting) {
    check(target, onExisting);
    Path whole = target.toAbsolutePath().normalize();
    Path parent = whole.getParent();
    boolean newParent = !Files.exists(parent);
    String name = "." + whole.getFileName() + "-" + ProcessHandle.current().pid();
    try {
      Files.createDirectories(parent);
      Path growing = parent.resolve(name);
      if (Files.exists(growing)) {
        delete(growing);
      }
      return new RunFolder(target, Files.createDirectory(growing), newParent);
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
  }

  private static void check(Path target, OnExisting onExisting) {
    if (target.toAbsolutePath().normalize().getFileName() == null) {
      throw new WrongInputException("\"" + target + "\" cannot be a results folder; name another");
    }
    if (!Files.exists(target)) {
      return;
    }
    if (!Files.isDirectory(target)) {
      throw new WrongInputException("\"" + target + "\" is a file; name a folder with --out");
    }
    if (isEmpty(target)) {
      return;
    }
    boolean results =
        Files.exists(target.resolve("study.json")) && Files.exists(target.resolve("manifest.json"));
    if (!results) {
      throw new WrongInputException(
          "\""
              + target
              + "\" is there already and holds no results of a run; name another folder"
              + " with --out");
    }
    if (onExisting == OnExisting.FAIL) {
      throw new WrongInputException(
          "\""
              + target
              + "\" is there already; name another folder with --out, or write"
              + " --on-existing overwrite to replace it");
    }
  }

  private static boolean isEmpty(Path folder) {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.findFirst().isEmpty();
    } catch (IOException e) {
      throw new WrongInputException("\"" + folder + "\" cannot be looked into");
    }
  }

  /**
   * The place of a file while the folder grows.
   *
   * @param name the file's name
   * @return its path
   */
  public Path file(String name) {
    return growing.resolve(name);
  }

  /**
   * The folder's own place.
   *
   * @return as given
   */
  public Path target() {
    return target;
  }

  /**
   * Gives the folder its own name, in place of an older one.
   *
   * @throws FailedException if that cannot be done; the older folder then stays
   */
  public void complete() {
    try {
      Path old = null;
      if (Files.exists(target)) {
        old = growing.resolveSibling(growing.getFileName() + "-old");
        Files.move(target, old);
      }
      try {
        Files.move(growing, target);
      } catch (IOException e) {
        if (old != null) {
          Files.move(old, target);
        }
        throw e;
      }
      complete = true;
      if (old != null) {
        delete(old);
      }
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    }
  }

  /** Leaves nothing behind, unless the folder was completed. */
  @Override
  public void close() {
    if (!complete) {
      try {
        delete(growing);
        if (newParent && isEmpty(growing.getParent())) {
          Files.delete(growing.getParent());
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private static void delete(Path folder) throws IOException {
    List<Path> all;
    try (Stream<Path> inside = Files.walk(folder)) {
      all = inside.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : all) {
      Files.deleteIfExists(path);
    }
  }
}
