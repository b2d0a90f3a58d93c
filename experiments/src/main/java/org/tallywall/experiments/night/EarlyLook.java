package org.tallywall.experiments.night;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.stats.EveryLook;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Checkpoint;
import org.tallywall.experiments.store.EarlyFolder;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.store.RunFolder;
import org.tallywall.experiments.store.WholeFile;
import org.tallywall.experiments.store.WholeFile.Filler;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;

/**
 * Writes down what a run shows that is not complete: of the first blocks as far as there is no gap,
 * so which deals count depends on nothing but how far it is. It only reads what the run has stored,
 * and may do so while the run goes on.
 */
public final class EarlyLook {
  private final Path target;
  private final Manifest manifest;
  private final Study study;
  private final ReadyStudy ready;
  private final Merger merged;

  private EarlyLook(Path target, Manifest manifest, Study study) {
    this.target = target;
    this.manifest = manifest;
    this.study = study;
    this.ready = new ReadyStudy(study);
    this.merged = new Merger(ready);
  }

  /**
   * What was written.
   *
   * @param folder where it lies
   * @param deals deals that its figures count
   * @param kept papers of an earlier look that somebody had worked on, a sentence each
   */
  public record Written(Path folder, long deals, List<String> kept) {}

  /**
   * Writes tables and whatever else papers are made of.
   *
   * @param target the results folder
   * @param manifest its manifest, of a run that is not complete
   * @param study its study
   * @param version the program's version
   * @return what was written
   * @throws WrongInputException if there are too few deals yet, or another version played them
   */
  public static Written write(Path target, Manifest manifest, Study study, String version) {
    Manifest now = Manifest.begin(study, version, List.of(), 1, Instant.EPOCH);
    RunFolder.checkSame(
        target, now, StudyJson.text(study, target), "cannot be looked at before its end");
    return new EarlyLook(target, manifest, study).write();
  }

  private Written write() {
    merged.early();
    if (study.extent().recorded() == 0) {
      read();
      return fill(null);
    }
    Path records = null;
    try {
      records = Files.createTempFile("tallywall", ResultNames.RECORDS);
      try (RecordWriter writer = new RecordWriter(records, true)) {
        merged.writeRecords(writer);
        read();
      }
      return fill(records);
    } catch (IOException e) {
      throw WholeFile.unwritten(EarlyFolder.place(target), e);
    } finally {
      delete(records);
    }
  }

  private static void delete(Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException staysThere) {
      // It lies where the machine clears up by itself.
    }
  }

  /** Reads the first blocks up to the first gap. */
  private void read() {
    BlockStore store =
        new BlockStore(
            target.resolve(ResultNames.BLOCKS),
            manifest.digest(),
            ready.codec(),
            (block, what) -> refuseOutdated(what));
    RunState state = ready.state();
    boolean more = true;
    for (long number = 0; more && number < state.blocks(); number++) {
      BlockResult result = store.kept(state.block(number));
      more = result != null && reads(result);
    }
  }

  private void refuseOutdated(Checkpoint.State what) {
    if (what == Checkpoint.State.OUTDATED) {
      throw new WrongInputException(
          "the blocks in \""
              + target
              + "\" were stored by a version of tallywall that counts other things; look at them"
              + " with that version");
    }
  }

  /** A block with more faults than the study allows ends the run, so it counts no more. */
  private boolean reads(BlockResult result) {
    try {
      return merged.read(result);
    } catch (PlayerFaultException tooMany) {
      return false;
    }
  }

  private Written fill(Path records) {
    Manifest.Done done = merged.done();
    if (done.deals() < EveryLook.LEAST) {
      throw new WrongInputException(
          "the run in \"%s\" is not complete, and %s; from %s on it can be looked at"
              .formatted(target, few(done.deals()), Words.grouped(EveryLook.LEAST)));
    }
    Map<String, Filler> files = ResultFiles.of(merged, new FaultWords(study), records);
    Path folder = EarlyFolder.place(target);
    List<String> kept =
        EarlyFolder.fill(
            target,
            StudyJson.text(study, folder),
            manifest.provisional(done, List.copyOf(files.keySet())),
            files);
    return new Written(folder, done.deals(), kept);
  }

  private static String few(long deals) {
    return deals == 0
        ? "no block of deals is finished yet"
        : "its first blocks hold " + Words.count(deals, "deal", "deals") + " so far";
  }
}
