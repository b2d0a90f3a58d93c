package org.tallywall.experiments.night;

import java.nio.file.Path;
import java.util.Optional;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.stats.EveryLook;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.PlannedDeals;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;

/**
 * A run that is to go on to another number of deals than was fixed before it began. It is the same
 * run, of which other blocks count; but as nobody can say that the number was not chosen by what
 * the run showed, its ranges have to hold at every look.
 */
public final class ChangedDeals {
  private ChangedDeals() {}

  /**
   * The study to go on with.
   *
   * @param study the study with the number of deals that is wanted now
   * @param target the results folder
   * @return the same, or one that says which number was planned; where the study may stop by a rule
   *     of its own, its number of deals says only where it stops at the latest
   * @throws WrongInputException if the number cannot become this one
   */
  public static Study of(Study study, Path target) {
    Optional<PlannedDeals> there = PlannedDeals.in(target);
    long wanted = study.extent().deals();
    boolean same = there.isEmpty() || !there.get().changed() && there.get().planned() == wanted;
    if (same || study.extent().until().isPresent()) {
      return study;
    }
    PlannedDeals before = there.get();
    check(study, target, before);
    return study.changed(wanted, before.planned());
  }

  private static void check(Study study, Path target, PlannedDeals before) {
    long wanted = study.extent().deals();
    int block = study.extent().blockSize();
    boolean complete =
        Manifest.read(target)
            .filter(manifest -> manifest.state() == Manifest.State.COMPLETE)
            .isPresent();
    if (complete && wanted < before.deals()) {
      throw new WrongInputException(
          "the run in \"%s\" is complete with %s; it cannot be cut down to %s afterwards"
              .formatted(
                  target, Words.count(before.deals(), "deal", "deals"), Words.grouped(wanted)));
    }
    if (wanted < EveryLook.LEAST) {
      throw new WrongInputException(
          "a run of %s that has begun can be changed to %s deals or more, not to %s"
              .formatted(
                  Words.count(before.planned(), "deal", "deals"),
                  Words.grouped(EveryLook.LEAST),
                  Words.grouped(wanted)));
    }
    if (wanted > before.planned() && before.planned() % block != 0) {
      throw new WrongInputException(
          "a run of %s cannot be made longer, for its last block of %s is not full; write --out for"
                  .formatted(Words.count(before.planned(), "deal", "deals"), block)
              + " a new run");
    }
    if (wanted < before.planned() && wanted % block != 0) {
      long below = Math.max(wanted / block, (EveryLook.LEAST + block - 1) / block) * block;
      throw new WrongInputException(
          "a run that has begun is cut down by whole blocks of %s deals; write --deals %s or %s"
              .formatted(block, below, below + block));
    }
  }
}
