package org.tallywall.experiments.night;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.answer.StudyAnswer;
import org.tallywall.experiments.design.PlayedDesign;
import org.tallywall.experiments.run.BlockReader;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.stop.Stopping;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.RecordWriter;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.Until;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.reports.table.Table;

/** Adds up the blocks of a study in their order, and says when they are enough. */
final class Merger implements BlockReader {
  private final Study study;
  private final TableSetup setup;
  private final StudyTally tally;
  private final Optional<Stopping> stopping;
  private final List<SpoiledDeal> faults = new ArrayList<>();
  private RecordWriter records;
  private long blocks;
  private boolean early;

  Merger(ReadyStudy ready) {
    this.study = ready.study();
    this.setup = ready.setup();
    this.tally = ready.emptyTally();
    this.stopping = study.extent().until().map(this::stopping);
  }

  private Stopping stopping(Until until) {
    return new Stopping(
        until,
        study.question().measures(),
        tally.plan().pairs(),
        PlayedDesign.of(study).seats().size(),
        study.question().confidence());
  }

  /** From now on records are written here; null where they are not. */
  void writeRecords(RecordWriter writer) {
    records = writer;
  }

  /** What is read is looked at before its end. */
  void early() {
    early = true;
  }

  @Override
  public boolean read(BlockResult result) {
    blocks++;
    faults.addAll(result.faults());
    if (faults.size() > study.extent().patience().faultsBorne()) {
      throw new PlayerFaultException(faults.get(faults.size() - 1), null);
    }
    if (records != null) {
      records.write(result.records());
    }
    if (stopping.isEmpty() || stopping.get().add(result.tally())) {
      tally.add(result.tally());
    }
    return stopping.isEmpty() || stopping.get().decision() != Stopping.Decision.REACHED;
  }

  /** How many blocks were read. */
  long blocks() {
    return blocks;
  }

  List<SpoiledDeal> faults() {
    return List.copyOf(faults);
  }

  Manifest.Done done() {
    return new Manifest.Done(tally.deals(), tally.games(), faults.size());
  }

  /** The tables of all that was read. */
  List<Table> tables() {
    return PlayedDesign.of(study).allTables(answer());
  }

  StudyAnswer answer() {
    boolean looked = early || study.extent().changed();
    return new StudyAnswer(study, setup.hands(), tally, stopping, looked);
  }
}
