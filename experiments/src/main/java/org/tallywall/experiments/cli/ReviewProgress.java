package org.tallywall.experiments.cli;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewTable;
import org.tallywall.experiments.review.ReviewWords;
import org.tallywall.reports.text.Lettering;
import org.tallywall.reports.text.TextTable;

/**
 * Shows how a review stands: on a terminal a table that is written over every second, elsewhere one
 * plain line every five.
 */
final class ReviewProgress implements Consumer<Supplier<Review>> {
  private static final long TABLE_NANOS = TimeUnit.SECONDS.toNanos(1);
  private static final long LINE_NANOS = TimeUnit.SECONDS.toNanos(5);

  private final Console console;
  private final String before;
  private final long pause;
  private long next;
  private int written;
  private boolean stopped;

  /**
   * Nothing is shown yet.
   *
   * @param console where to
   * @param before what a line begins with
   */
  ReviewProgress(Console console, String before) {
    this.console = console;
    this.before = before;
    pause = console.terminal() ? TABLE_NANOS : LINE_NANOS;
    next = System.nanoTime() + (console.terminal() ? 0 : pause);
  }

  @Override
  public synchronized void accept(Supplier<Review> known) {
    long now = System.nanoTime();
    if (stopped || !console.progress() || now - next < 0) {
      return;
    }
    next = now + pause;
    Review review = known.get();
    if (console.terminal()) {
      draw(TextTable.text(ReviewTable.worth(review), console.width(), Lettering.UNICODE));
    } else {
      console.complain("tallywall: " + before + ReviewWords.standing(review));
    }
  }

  private void draw(String table) {
    List<String> lines = table.lines().toList();
    console.redraw(written, lines);
    written = lines.size();
  }

  /** Says that the user was heard. */
  synchronized void stopping() {
    stopped = true;
    end();
    console.complain("tallywall: stopping; what is known so far follows ...");
  }

  /** Clears what was drawn. */
  synchronized void end() {
    if (written > 0) {
      console.redraw(written, List.of());
    }
    written = 0;
  }
}
