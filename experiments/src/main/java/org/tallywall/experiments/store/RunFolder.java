package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.results.ResultNames;

/**
 * The folder of a run's results. From the start it holds the study, a manifest that says how far
 * the run is, and the blocks played so far; tables and pages appear when all is played, each whole,
 * and the manifest calls them complete last of all. As long as this object is open no other run can
 * use the folder.
 */
public final class RunFolder implements AutoCloseable {
  private final Path target;
  private final RunLock lock;
  private final FreshFolder fresh;
  private final boolean resumed;
  private Manifest manifest;
  private boolean keeps;
  private final List<String> remarks = new ArrayList<>();

  private RunFolder(
      Path target, RunLock lock, FreshFolder fresh, boolean resumed, Manifest manifest) {
    this.target = target;
    this.lock = lock;
    this.fresh = fresh;
    this.resumed = resumed;
    this.manifest = manifest;
  }

  /**
   * Opens a folder for a run.
   *
   * @param target the folder's place; an empty folder counts as new
   * @param onExisting what to do when results are there already
   * @param wanted the run that is to take place
   * @param study its study as a file
   * @param before refuses the run where it lacks something; nothing was changed before
   * @return the folder, to be closed
   * @throws WrongInputException if the folder may not be used so
   * @throws FailedException if nothing can be written there
   */
  public static RunFolder open(
      Path target, OnExisting onExisting, Manifest wanted, String study, Runnable before) {
    FolderStanding standing = FolderStanding.of(target);
    standing.check(onExisting, wanted, study);
    if (onExisting != OnExisting.RESUME || !standing.complete(wanted)) {
      before.run();
    }
    FreshFolder fresh = FreshFolder.make(target);
    RunLock lock = null;
    try {
      lock = RunLock.take(target.resolve(ResultNames.BLOCKS).resolve(ResultNames.LOCK));
      if (lock == null) {
        throw FolderStanding.busy(target);
      }
      // Another run may have come and gone since the first look.
      standing = FolderStanding.of(target);
      standing.check(onExisting, wanted, study);
      RunFolder folder = begin(lock, fresh, standing, onExisting, wanted, study);
      lock = null;
      return folder;
    } catch (IOException e) {
      throw WholeFile.unwritten(target, e);
    } finally {
      if (lock != null) {
        release(lock);
      }
    }
  }

  /**
   * Looks whether a run that would go on in a folder has anything left to do; changes nothing.
   *
   * @param target the folder's place
   * @param wanted the run
   * @param study its study as a file
   * @return true if all its results are there
   * @throws WrongInputException if another run's results are there
   */
  public static boolean nothingLeft(Path target, Manifest wanted, String study) {
    FolderStanding standing = FolderStanding.of(target);
    standing.check(OnExisting.RESUME, wanted, study);
    return standing.complete(wanted);
  }

  /**
   * What a run would be told that may not begin in a folder; changes nothing.
   *
   * @param target the folder's place
   * @param onExisting what to do when results are there already
   * @param wanted the run
   * @param study its study as a file
   * @return the sentence, with what to write instead; empty where the run may begin
   */
  public static Optional<String> refusal(
      Path target, OnExisting onExisting, Manifest wanted, String study) {
    try {
      FolderStanding.of(target).check(onExisting, wanted, study);
      return Optional.empty();
    } catch (WrongInputException refused) {
      return Optional.of(refused.getMessage());
    }
  }

  private static RunFolder begin(
      RunLock lock,
      FreshFolder fresh,
      FolderStanding standing,
      OnExisting onExisting,
      Manifest wanted,
      String study)
      throws IOException {
    Path target = standing.target();
    Optional<Manifest> there = standing.manifest();
    boolean resumes = onExisting == OnExisting.RESUME;
    boolean damaged = resumes && standing.manifestDamaged(wanted);
    boolean resumed = resumes && (damaged || there.isPresent());
    if (resumed && !damaged && standing.complete(wanted)) {
      return new RunFolder(target, lock, fresh, true, there.get());
    }
    Manifest manifest = resumed && !damaged ? wanted.after(there.get()) : wanted;
    List<String> old = there.map(Manifest::files).orElse(List.of());
    Manifest clearing = manifest.with(old).withPapers(there.map(Manifest::papers).orElse(Map.of()));
    WholeFile.write(target.resolve(ResultNames.MANIFEST), clearing.json());
    List<String> remarks = new ArrayList<>(Leftovers.clear(target, old, !resumed));
    if (!resumed) {
      remarks.addAll(EarlyFolder.takeAway(target));
    }
    if (damaged) {
      remarks.add(
          "manifest.json was damaged and was made again from the study; the stored blocks are whole");
    }
    WholeFile.write(target.resolve(ResultNames.MANIFEST), manifest.json());
    WholeFile.write(target.resolve(ResultNames.STUDY), study);
    RunFolder folder = new RunFolder(target, lock, fresh, resumed, manifest);
    folder.remarks.addAll(remarks);
    return folder;
  }

  /**
   * Refuses a run that is another one.
   *
   * @param target the folder
   * @param now the run that would be played now
   * @param study its study as a file
   * @param refused what cannot be done with another one, as in {@code cannot be played again}
   * @throws WrongInputException with what differs
   */
  public static void checkSame(Path target, Manifest now, String study, String refused) {
    List<String> differences =
        Manifest.read(target)
            .map(
                there ->
                    ManifestDifferences.between(
                        there, now, target.resolve(ResultNames.STUDY), study))
            .orElse(List.of("there is no manifest that can be read"));
    if (!differences.isEmpty()) {
      throw new WrongInputException(
          "\"" + target + "\" " + refused + "; different: " + String.join("; ", differences));
    }
  }

  /**
   * The folder's place.
   *
   * @return as given
   */
  public Path target() {
    return target;
  }

  /**
   * Whether a run in the folder goes on.
   *
   * @return false for a new one
   */
  public boolean resumed() {
    return resumed;
  }

  /**
   * How far the run is and where it came from.
   *
   * @return as it stands in the folder
   */
  public Manifest manifest() {
    return manifest;
  }

  /**
   * Whether all results are there, so that nothing is to be done.
   *
   * @return true for a run that was complete when the folder was opened, or has become so
   */
  public boolean complete() {
    return manifest.state() == Manifest.State.COMPLETE;
  }

  /**
   * What was found and done when the folder was opened that the user should know.
   *
   * @return a sentence each
   */
  public List<String> remarks() {
    return List.copyOf(remarks);
  }

  /**
   * The study's file in the folder.
   *
   * @return its path
   */
  public Path study() {
    return target.resolve(ResultNames.STUDY);
  }

  /**
   * The folder of the blocks.
   *
   * @return its path
   */
  public Path blocks() {
    return target.resolve(ResultNames.BLOCKS);
  }

  /**
   * The place of a file that grows during the run.
   *
   * @param name the name that it will have when all is complete
   * @return a path where nobody takes it for a result
   */
  public Path growing(String name) {
    return blocks().resolve(name + WholeFile.PART);
  }

  /** From now on the folder stays even if no block was kept: there is something to look at. */
  public void keep() {
    keeps = true;
  }

  /**
   * Notes that the run was stopped.
   *
   * @param done what was done
   * @throws FailedException if that cannot be written
   */
  public void stopped(Manifest.Done done) {
    write(manifest.with(Manifest.State.STOPPED, done, Instant.now()));
  }

  /**
   * Writes the results, each file whole, and then calls the run complete.
   *
   * @param files what fills each file, by its name, in the order of writing
   * @param done what was done
   * @return papers of an early look that somebody had worked on and that stay, a sentence each
   * @throws FailedException if a file cannot be written; the run can then be resumed
   */
  public List<String> complete(Map<String, WholeFile.Filler> files, Manifest.Done done) {
    List<String> names = new ArrayList<>(files.keySet());
    write(manifest.with(names));
    for (Map.Entry<String, WholeFile.Filler> file : files.entrySet()) {
      Path path = target.resolve(file.getKey());
      try {
        Files.createDirectories(path.getParent());
      } catch (IOException e) {
        throw WholeFile.unwritten(path, e);
      }
      WholeFile.grow(path, file.getValue());
    }
    write(manifest.with(Manifest.State.COMPLETE, done, Instant.now()));
    return takeEarlyFiguresAway();
  }

  /** What was shown before the run was complete could be taken for its results. */
  private List<String> takeEarlyFiguresAway() {
    try {
      return EarlyFolder.takeAway(target);
    } catch (IOException staysThere) {
      // Its pages say themselves that they are provisional.
      return List.of();
    }
  }

  private void write(Manifest changed) {
    WholeFile.write(target.resolve(ResultNames.MANIFEST), changed.json());
    manifest = changed;
  }

  /** Lets other runs use the folder; a new one in which nothing was kept is taken away again. */
  @Override
  public void close() {
    if (!complete() && !keeps) {
      fresh.takeAwayIfEmpty();
    }
    release(lock);
  }

  private static void release(RunLock lock) {
    try {
      lock.close();
    } catch (IOException e) {
      throw new FailedException("the lock of the folder could not be given back", e);
    }
  }
}
