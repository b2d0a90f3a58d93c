package org.tallywall.experiments.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.design.Noticed;
import org.tallywall.experiments.night.DryRun;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.words.MeasureWords;
import org.tallywall.reports.words.Wording;

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
    List<String> sentences = new ArrayList<>(List.of(extent()));
    if (measured.left() < study.extent().deals()) {
      sentences.add(left());
    }
    sentences.addAll(List.of(files(target), room(), time(threads)));
    measured.notices().forEach(noticed -> sentences.add(notices(noticed)));
    sentences.add("Nothing was written.");
    return sentences;
  }

  private String extent() {
    long deals = study.extent().deals();
    int size = study.extent().blockSize();
    return study.question().name()
        + ": "
        + most
        + Words.count(deals, "deal", "deals")
        + ", "
        + most
        + "about "
        + Words.count(Math.round(deals * measured.gamesPerDeal()), "game", "games")
        + ", in "
        + Words.count(Block.count(deals, size), "block", "blocks")
        + " of "
        + size
        + " deals.";
  }

  private String left() {
    long deals = study.extent().deals();
    return Words.count(deals - measured.left(), "deal is", "deals are")
        + " there already; left to play: "
        + most
        + Words.count(measured.left(), "deal", "deals")
        + ", in "
        + Words.count(measured.blocks(), "block", "blocks")
        + ".";
  }

  /** How small a difference the run will notice; a night need not be spent to learn that. */
  private String notices(Noticed noticed) {
    boolean several = measured.notices().size() > 1;
    String who = several ? Wording.quoted(noticed.arm()) + ": " : "";
    String by = Words.count(measured.known(), "deal", "deals");
    String measure = noticed.measure().text();
    if (noticed.size().isEmpty()) {
      return who
          + "In "
          + by
          + " too few came out differently to tell how small a difference ("
          + MeasureWords.heading(measure)
          + ") this run will notice.";
    }
    String unit = MeasureWords.of(measure).map(MeasureWords::unit).orElse("in 100 games");
    String shared =
        noticed.together() > 1
            ? ", shared among " + noticed.together() + " declared comparisons"
            : "";
    return who
        + "If the true difference is about "
        + Wording.rounded(100 * noticed.size().getAsDouble(), 2)
        + " "
        + unit
        + " or more, the run will notice it in 90 of 100 cases ("
        + Wording.level(study.question().confidence())
        + " % level"
        + shared
        + "; by the spread of "
        + by
        + ").";
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
        + ProgressPrinter.speed(speed, "deal", "deals")
        + " ("
        + ProgressPrinter.speed(speed * measured.gamesPerDeal(), "game", "games")
        + "), so "
        + (measured.left() < study.extent().deals() ? "the rest" : "it")
        + " would take "
        + most
        + "about "
        + ProgressPrinter.duration(Math.round(measured.left() / speed))
        + ".";
  }
}
