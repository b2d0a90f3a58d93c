package org.tallywall.experiments.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.experiments.error.FailedException;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.night.BlockCheck;
import org.tallywall.experiments.night.ReadyStudy;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.store.BlockStore;
import org.tallywall.experiments.store.Manifest;
import org.tallywall.experiments.store.RunFolder;
import org.tallywall.experiments.studies.StudyFile;
import org.tallywall.experiments.study.Changes;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.study.StudyJson;
import org.tallywall.experiments.words.Words;
import org.tallywall.reports.results.ResultNames;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.jar.JarShelf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Plays some blocks of a run once more and compares. */
@Command(
    name = "verify",
    description =
        "Plays some blocks of a run again, chosen at random, and compares them byte by byte with"
            + " what is stored.",
    footer = "Exit codes: 0 all the same, 1 one is different.")
final class VerifyCommand implements Callable<Integer> {
  private static final int USUAL_BLOCKS = 5;

  private final Console console;

  @Parameters(paramLabel = "FOLDER", description = "The results folder.")
  private Path folder;

  @Option(
      names = "--blocks",
      paramLabel = "NUMBER",
      description = "How many blocks; 5 unless given.")
  private int number = USUAL_BLOCKS;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      description = "Chooses the blocks; another choice each time unless given.")
  private Long seed;

  @Option(
      names = "--threads",
      paramLabel = "NUMBER",
      description = "How many threads play; all processors unless given.")
  private Integer threads;

  @Mixin private Trust trust;

  VerifyCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    int workers = Threads.of(threads);
    if (number < 1) {
      throw new WrongInputException("--blocks is 1 or more, not " + number);
    }
    Manifest manifest = manifest();
    Catalog catalog = Catalog.standard().with(new JarShelf(trust.played(manifest.jars())));
    Study study = StudyFile.read(folder.resolve(ResultNames.STUDY), Changes.NONE, catalog);
    Manifest now = Manifest.begin(study, Version.text(), List.of(), workers, Instant.now());
    RunFolder.checkSame(
        folder, now, StudyJson.text(study, folder), "cannot be played again as it was");
    ReadyStudy ready = new ReadyStudy(study);
    BlockStore store =
        new BlockStore(
            folder.resolve(ResultNames.BLOCKS),
            manifest.digest(),
            ready.codec(),
            (block, what) -> {});
    RunState state = ready.state();
    long chosenBy = seed == null ? Instant.now().toEpochMilli() : seed;
    List<BlockCheck> checks = new ArrayList<>();
    BitSet counted = store.found().get(0, (int) state.blocks());
    for (int block : chosen(counted, chosenBy)) {
      checks.add(new BlockCheck(ready, store, state.block(block)));
    }
    return report(checks, check(checks, workers), counted.cardinality(), chosenBy);
  }

  private Manifest manifest() {
    return Manifest.read(folder)
        .orElseThrow(
            () ->
                new WrongInputException(
                    "\""
                        + folder
                        + (Files.exists(folder.resolve(ResultNames.MANIFEST))
                            ? "\" has a damaged manifest.json; run its study with --on-existing"
                                + " resume, which writes a new one"
                            : "\" has no results in it; name a results folder")));
  }

  /** Some of the blocks that are there, in their order. */
  private int[] chosen(BitSet found, long chosenBy) {
    if (found.isEmpty()) {
      throw new WrongInputException(
          "\"" + folder + "\" has no blocks left, so there is nothing to compare");
    }
    int[] blocks = found.stream().toArray();
    new RandomStream(new StreamKey(chosenBy, 0, Purpose.RESAMPLING, 0, 0, 0))
        .shuffle(blocks, blocks.length);
    int[] first = Arrays.copyOf(blocks, Math.min(number, blocks.length));
    Arrays.sort(first);
    return first;
  }

  private static List<BlockCheck.Finding> check(List<BlockCheck> checks, int workers) {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            workers,
            work -> {
              Thread thread = new Thread(work, "check");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<BlockCheck.Finding> findings = new ArrayList<>();
      for (Future<BlockCheck.Finding> finding : pool.invokeAll(checks)) {
        findings.add(finding.get());
      }
      return findings;
    } catch (InterruptedException interrupted) {
      throw new FailedException("the check was interrupted", interrupted);
    } catch (ExecutionException broken) {
      throw failed(broken.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static RuntimeException failed(Throwable cause) {
    if (cause instanceof PlayerFaultException fault) {
      return new FailedException(
          "the player at seat %s failed in deal %s, which it did not do in the run"
              .formatted(fault.fault().seat(), fault.fault().deal()),
          fault);
    } else if (cause instanceof Error error) {
      throw error;
    }
    return cause instanceof RuntimeException broken ? broken : new IllegalStateException(cause);
  }

  private int report(
      List<BlockCheck> checks, List<BlockCheck.Finding> findings, int there, long chosenBy) {
    int same = 0;
    for (int at = 0; at < checks.size(); at++) {
      Block block = checks.get(at).block();
      console.say(
          "block %s (deals %s to %s): %s"
              .formatted(
                  Words.grouped(block.number()),
                  Words.grouped(block.firstDeal()),
                  Words.grouped(block.firstDeal() + block.deals() - 1),
                  findings.get(at).words()));
      same += findings.get(at) == BlockCheck.Finding.SAME ? 1 : 0;
    }
    console.say(
        "%s of %s played again are the same; %s stored; chosen by seed %s"
            .formatted(
                same,
                Words.count(checks.size(), "block", "blocks"),
                Words.count(there, "block is", "blocks are"),
                chosenBy));
    return same == checks.size() ? Program.DONE : Program.FAILED;
  }
}
