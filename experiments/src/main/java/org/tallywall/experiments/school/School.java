package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.tallywall.core.sheet.SheetWriter;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunLimits;

/**
 * The players' school: plays games, draws decisions of every kind, and looks at each. Every game
 * and every decision is a function of the question and its number, so any thread takes any; what
 * was found is handed over in the order of the numbers.
 */
public final class School {
  private final SchoolQuestion question;
  private final RunLimits run;
  private final Examiner examiner;
  private volatile boolean stopped;
  private List<Lots.Lot> drawn;

  /**
   * A school.
   *
   * @param question what is to be found out
   * @param run threads and patience with players
   */
  public School(SchoolQuestion question, RunLimits run) {
    this.question = question;
    this.run = run;
    this.examiner = new Examiner(question, new RunLimits(1, run.decisionMillis(), run.clock()));
  }

  /** Has it end when the decisions being looked at are done. For any thread. */
  public void stop() {
    stopped = true;
  }

  /**
   * Whether somebody stopped it.
   *
   * @return true after {@link #stop}
   */
  public boolean stopped() {
    return stopped;
  }

  /**
   * Plays the games and counts.
   *
   * @param listener is told how many games have been played, now and then and from any thread
   * @return what was counted; not complete where it was stopped
   */
  public Counts count(IntConsumer listener) {
    int[][] counts = new int[Kind.values().length][question.games()];
    AtomicInteger next = new AtomicInteger();
    everywhere(
        () -> {
          Pulse pulse = new Pulse();
          int[] deal = new int[1];
          KindTable table =
              new KindTable(
                  question, pulse, (kind, view, asked, move) -> counts[kind.ordinal()][deal[0]]++);
          Patient.wait(
              pulse,
              run,
              () -> {
                for (deal[0] = next.getAndIncrement();
                    deal[0] < question.games() && !stopped;
                    deal[0] = next.getAndIncrement()) {
                  table.play(deal[0]);
                  listener.accept(deal[0] + 1);
                }
                return counts;
              });
        });
    return new Counts(counts);
  }

  /**
   * How many decisions are looked at.
   *
   * @param counts what was counted
   * @return 0 or more
   */
  public int decisions(Counts counts) {
    return lots(counts).size();
  }

  /** Whether a decision read from a file is the one that its number stands for. */
  boolean fits(Counts counts, Judged one) {
    List<Lots.Lot> lots = lots(counts);
    return one.number() < lots.size()
        && lots.get(one.number()).kind() == one.kind()
        && lots.get(one.number()).deal() == one.deal()
        && one.second().worlds() % Math.max(1, Examiner.SECOND * question.worlds()) == 0
        && one.second().worlds() <= Examiner.SECOND * question.worlds();
  }

  private List<Lots.Lot> lots(Counts counts) {
    if (drawn == null) {
      drawn = Lots.draw(counts, question.seed(), question.each());
    }
    return drawn;
  }

  /**
   * Looks at decisions.
   *
   * @param counts what was counted
   * @param done how many were looked at before, in their order
   * @param listener takes what was found, in the order of the numbers, one at a time
   */
  public void look(Counts counts, int done, Consumer<Judged> listener) {
    List<Lots.Lot> lots = lots(counts);
    AtomicInteger next = new AtomicInteger(done);
    InOrder order = new InOrder(done, listener);
    everywhere(
        () -> {
          for (int at = next.getAndIncrement();
              at < lots.size() && !stopped;
              at = next.getAndIncrement()) {
            order.accept(examiner.judge(find(lots.get(at))));
          }
        });
  }

  /**
   * The sheet of a decision that was looked at.
   *
   * @param counts what was counted
   * @param number its number
   * @return the text of a position sheet
   */
  public String sheet(Counts counts, int number) {
    return find(lots(counts).get(number)).sheet();
  }

  /** Plays the game of a decision again. */
  Found find(Lots.Lot lot) {
    Pulse pulse = new Pulse();
    List<Found> found = new ArrayList<>();
    int[] before = new int[1];
    KindTable table =
        new KindTable(
            question,
            pulse,
            (kind, view, moment, move) -> {
              if (kind == lot.kind() && before[0]++ == lot.place()) {
                found.add(
                    new Found(
                        lot, view.seat(), view.wallLeft(), move, SheetWriter.text(view, moment)));
              }
            });
    Patient.wait(
        pulse,
        run,
        () -> {
          table.play(lot.deal());
          return found;
        });
    return found.get(0);
  }

  /** Does the same with each thread. */
  private void everywhere(Runnable work) {
    ExecutorService threads =
        Executors.newFixedThreadPool(
            run.threads(),
            task -> {
              Thread thread = new Thread(task, "school");
              thread.setDaemon(true);
              return thread;
            });
    try {
      List<Future<?>> all = new ArrayList<>();
      for (int thread = 0; thread < run.threads(); thread++) {
        all.add(threads.submit(work));
      }
      all.forEach(School::await);
    } finally {
      threads.shutdownNow();
    }
  }

  private static void await(Future<?> one) {
    try {
      one.get();
    } catch (ExecutionException thrown) {
      throw School.<RuntimeException>asItIs(thrown.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while decisions were looked at", interrupted);
    }
  }

  /** Throws what was thrown, checked or not: code of a user's own may throw anything. */
  @SuppressWarnings("unchecked")
  private static <T extends Throwable> T asItIs(Throwable thrown) throws T {
    throw (T) thrown;
  }
}
