package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.List;
import org.tallywall.experiments.night.DryRun;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;

/** Says what a run would do. */
final class DryRunWords {
  private static final long MIB = 1L << 20;

  private final Study study;
  private final DryRun.Measured measured;
  private final String most;

  DryRunWords(Study study, DryRun.Measured measured) {
    this.study = study;
    this.measured = measured;
    this.most = study.extent().until().isPresent() ? "at most " : "";
  }

  /** What would be done, a sentence each. */
  List<String> sentences(Path target, int threads) {
    return List.of(extent(), files(target), room(), time(threads), "Nothing was written.");
  }

  private String extent() {
    long deals = study.extent().deals();
    return study.question().name()
        + ": "
        + most
        + Words.count(deals, "deal", "deals")
        + ", "
        + most
        + "about "
        + Words.count(Math.round(deals * measured.gamesPerDeal()), "game", "games")
        + ", in "
        + Words.count(measured.blocks(), "block", "blocks")
        + " of "
        + study.extent().blockSize()
        + " deals.";
  }

  private String files(Path target) {
    long recorded = study.extent().recorded();
    return "Results would go to "
        + target
        + ": a file for every block, at the end the tables and columns.md"
        + (recorded == 0 ? "" : ", and the records of " + Words.count(recorded, "deal", "deals"))
        + ".";
  }

  private String room() {
    return "They would take about "
        + Words.grouped(measured.need() / MIB + 1)
        + " MiB; "
        + Words.grouped(measured.free() / MIB)
        + " MiB are free there.";
  }

  private String time(int threads) {
    double speed = measured.dealsPerSecond();
    return "With "
        + Words.count(threads, "thread", "threads")
        + " this machine plays "
        + Words.grouped(Math.round(speed))
        + " deals a second ("
        + Words.grouped(Math.round(speed * measured.gamesPerDeal()))
        + " games), so it would take "
        + most
        + "about "
        + ProgressPrinter.duration(Math.round(study.extent().deals() / speed))
        + ".";
  }
}
