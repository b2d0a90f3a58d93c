package org.tallywall.experiments.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.reports.results.ResultNames;

/**
 * What is found in a folder before a run begins in it.
 *
 * @param target the folder
 * @param used whether anything is in it that a run would have to do with
 * @param manifest the manifest of the run in it; empty where there is none
 */
record FolderStanding(Path target, boolean used, Optional<Manifest> manifest) {
  /** Looks into a folder. */
  static FolderStanding of(Path target) {
    if (target.toAbsolutePath().normalize().getFileName() == null) {
      throw new WrongInputException("\"" + target + "\" cannot be a results folder; name another");
    }
    if (!Files.exists(target)) {
      if (Files.isSymbolicLink(target)) {
        throw new WrongInputException(
            "\"" + target + "\" is a link that leads nowhere; name a folder with --out");
      }
      return new FolderStanding(target, false, Optional.empty());
    }
    if (!Files.isDirectory(target)) {
      throw new WrongInputException("\"" + target + "\" is a file; name a folder with --out");
    }
    return new FolderStanding(target, used(target), Manifest.read(target));
  }

  /** A folder with nothing but an empty folder of blocks was left by a run that died at once. */
  private static boolean used(Path target) {
    try (Stream<Path> inside = Files.list(target)) {
      return inside.anyMatch(path -> !path.getFileName().toString().equals(ResultNames.BLOCKS))
          || holdsBlocks(target.resolve(ResultNames.BLOCKS));
    } catch (IOException e) {
      throw new WrongInputException("\"" + target + "\" cannot be looked into");
    }
  }

  private static boolean holdsBlocks(Path blocks) throws IOException {
    if (!Files.isDirectory(blocks)) {
      return Files.exists(blocks);
    }
    try (Stream<Path> inside = Files.list(blocks)) {
      return inside.anyMatch(path -> !path.getFileName().toString().equals(ResultNames.LOCK));
    }
  }

  /** Whether the folder holds all results of a run. */
  boolean complete() {
    return manifest.isPresent() && manifest.get().state() == Manifest.State.COMPLETE;
  }

  /** Whether it holds all results that a run is to have. */
  boolean complete(Manifest wanted) {
    return complete() && manifest.get().answers(wanted);
  }

  /**
   * Refuses what may not be done.
   *
   * @param onExisting what the user wants to be done
   * @param wanted the run that is to take place
   * @param study its study as a file
   * @throws WrongInputException with what to write instead
   */
  void check(OnExisting onExisting, Manifest wanted, String study) {
    if (!used) {
      return;
    }
    if (onExisting == OnExisting.RESUME && manifestDamaged(wanted)) {
      return;
    }
    if (manifest.isEmpty() && !Files.exists(target.resolve(ResultNames.MANIFEST))) {
      throw refused(
          " is there already and holds no results of a run; name another folder with --out");
    }
    switch (onExisting) {
      case FAIL -> throw refused(found());
      case RESUME -> checkSame(wanted, study);
      case OVERWRITE -> {
        // It is a run's, so it may be replaced.
      }
    }
  }

  private String found() {
    String other = "; name another folder with --out, or write --on-existing ";
    if (manifest.isPresent() && manifest.get().state() != Manifest.State.COMPLETE) {
      return " holds a run that is not complete"
          + other
          + "resume to go on with it, or --on-existing overwrite to start over";
    }
    return " is there already" + other + "overwrite to replace it";
  }

  private void checkSame(Manifest wanted, String study) {
    if (manifest.isEmpty()) {
      throw refused(
          " has a manifest.json that cannot be read, and no stored block of this study; name another"
              + " folder with --out, or write --on-existing overwrite to start over");
    }
    List<String> differences =
        ManifestDifferences.between(
            manifest.get(), wanted, target.resolve(ResultNames.STUDY), study);
    if (!differences.isEmpty()) {
      throw refused(
          " holds another run, which cannot go on as this one; different: "
              + String.join("; ", differences)
              + ". Name another folder with --out, or write --on-existing overwrite to start over");
    }
  }

  /**
   * Whether the manifest is not that of a run whose blocks lie in the folder all the same: it was
   * damaged, and what it said follows from the study.
   *
   * @param wanted the run
   * @return true if the manifest is to be made anew
   */
  boolean manifestDamaged(Manifest wanted) {
    boolean other = manifest.isEmpty() || !manifest.get().differing(wanted).isEmpty();
    return used && other && StoredRun.holds(target, wanted.digest());
  }

  private WrongInputException refused(String why) {
    return new WrongInputException("\"" + target + "\"" + why);
  }

  /** The complaint that the folder is in use. */
  static WrongInputException busy(Path target) {
    return new WrongInputException(
        "another run is going on in \""
            + target
            + "\"; wait for its end, stop it, or name another folder with --out");
  }
}
