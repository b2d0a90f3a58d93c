package org.tallywall.experiments.attack;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicLong;

/** Many attacks over all processors. */
final class Campaign {
  /** Every so many attacks, one is put twice: the answers must be the same. */
  private static final int TWICE = 16;

  /** What is measured cannot be the same twice. */
  private static final String MEASURED = "study, tried out";

  private final Sources sources;
  private final long seed;
  private final Path root;
  private final Findings findings;

  /**
   * A campaign.
   *
   * @param sources makes the attacks
   * @param seed which attacks
   * @param root where the attacks have their folders
   * @param findings takes counts and breaches
   */
  Campaign(Sources sources, long seed, Path root, Findings findings) {
    this.sources = sources;
    this.seed = seed;
    this.root = root;
    this.findings = findings;
  }

  /** Puts the attacks with the numbers from 0 up to but without the given one. */
  void run(long attacks) {
    int lanes = Runtime.getRuntime().availableProcessors();
    AtomicLong next = new AtomicLong();
    ExecutorService pool = Executors.newFixedThreadPool(lanes);
    try {
      List<Future<?>> all = new ArrayList<>();
      for (int lane = 0; lane < lanes; lane++) {
        Path own = root.resolve("lane-" + lane);
        all.add(pool.submit(() -> work(own, next, attacks)));
      }
      for (Future<?> one : all) {
        one.get();
      }
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      pool.shutdownNow();
    }
  }

  private void work(Path own, AtomicLong next, long attacks) {
    try (Lane lane = new Lane(own)) {
      for (long number = next.getAndIncrement();
          number < attacks;
          number = next.getAndIncrement()) {
        put(lane, number);
      }
    }
  }

  private void put(Lane lane, long number) {
    Attack attack = sources.attack(seed, number);
    long start = System.nanoTime();
    Outcome outcome = lane.put(attack);
    findings.count(attack, outcome, System.nanoTime() - start);
    List<String> broken = new ArrayList<>(Promise.broken(attack, outcome));
    if (broken.isEmpty() && number % TWICE == 0 && !attack.name().equals(MEASURED)) {
      broken.addAll(Promise.differing(outcome, lane.put(attack)));
    }
    if (!broken.isEmpty()) {
      findings.breach(seed, number, attack, broken, Suspect.of(lane, attack, broken));
    }
  }
}
