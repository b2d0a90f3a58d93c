package org.tallywall.experiments.gauges.review;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.review.Advisers;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.Guesses;
import org.tallywall.experiments.review.Review;
import org.tallywall.experiments.review.ReviewLimits;
import org.tallywall.experiments.review.ReviewQuestion;
import org.tallywall.experiments.review.Reviewer;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.review.Shortlist;
import org.tallywall.experiments.run.RunLimits;
import org.tallywall.experiments.stats.Interval;
import org.tallywall.experiments.stats.Proportion;
import org.tallywall.experiments.study.Patience;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * Tries reviews out: on positions drawn from simulated games, a short review is compared with a
 * much longer one. A line for each position, then what it comes to.
 */
public final class ReviewsTried {
  private static final double NEAR = 1;

  private final TableSetup setup;
  private final Seated seated;
  private final int threads;

  private ReviewsTried(TableSetup setup, int threads) {
    this.setup = setup;
    this.seated =
        Seated.of(new PlayerSpec(Catalog.standard().type("watchful").orElseThrow(), Map.of()));
    this.threads = threads;
  }

  /**
   * Tries reviews.
   *
   * @param args the card, the seed, how many positions, games of a short review, how many times as
   *     many a long one has, threads
   */
  public static void main(String[] args) {
    ConcreteHands hands = new ConcreteHands(CardFile.read(Path.of(args[0])).orThrow());
    ReviewsTried tried =
        new ReviewsTried(new TableSetup(hands, TableRules.STANDARD), Integer.parseInt(args[5]));
    tried.positions(
        Long.parseLong(args[1]),
        Integer.parseInt(args[2]),
        Long.parseLong(args[3]),
        Long.parseLong(args[4]));
  }

  private void positions(long seed, int wanted, long games, long times) {
    FoundPositions positions =
        new FoundPositions(setup, seated.maker(), seed, moment -> moment instanceof Moment.Turn);
    List<Compared> differ = new ArrayList<>();
    List<Compared> all = new ArrayList<>();
    for (long deal = 0; differ.size() < wanted; deal++) {
      String text = positions.of(deal);
      if (text != null) {
        PositionSheet sheet = PositionSheet.of("deal " + deal, text, setup);
        List<Considered> choices =
            new Shortlist(sheet, seated, Advisers.usual(), player -> player).choices(List.of());
        Compared one =
            new Compared(
                review(sheet, choices, 2 * deal, games),
                review(sheet, choices, 2 * deal + 1, games * times));
        all.add(one);
        if (one.differs()) {
          differ.add(one);
        }
        say(deal, sheet, one);
      }
    }
    sum(all, differ);
  }

  private Review review(PositionSheet sheet, List<Considered> choices, long seed, long games) {
    ReviewQuestion question =
        new ReviewQuestion(sheet, choices, Collections.nCopies(4, seated), Guesses.USUAL, seed);
    ReviewLimits limits =
        new ReviewLimits(
            games, ReviewLimits.ANY_TIME, RunLimits.of(threads, Patience.USUAL.decisionSeconds()));
    return new Reviewer(question, limits).review(known -> {});
  }

  private static void say(long deal, PositionSheet sheet, Compared one) {
    System.out.printf(
        Locale.ROOT,
        "deal %d wall %d choices %d differs %s quick %s long %s loss %.2f apart %d wrong %d games %d%n",
        deal,
        sheet.view().wallLeft(),
        one.thorough().choices().size(),
        one.differs(),
        one.quick().best().choice().text(),
        one.thorough().best().choice().text(),
        one.loss(),
        one.apart(),
        one.wronglyBehind(),
        one.thorough().games());
  }

  private static void sum(List<Compared> all, List<Compared> differ) {
    long near = differ.stream().filter(one -> one.loss() <= NEAR).count();
    long same = differ.stream().filter(Compared::sameBest).count();
    Interval range = new Proportion(near, differ.size()).wilson(0.95);
    System.out.printf(
        Locale.ROOT,
        "%d positions, %d in which the best differs from the next: within %s point %d "
            + "(%.1f %% to %.1f %%), the same choice %d, mean loss %.3f points%n",
        all.size(),
        differ.size(),
        NEAR,
        near,
        100 * range.low(),
        100 * range.high(),
        same,
        differ.stream().mapToDouble(Compared::loss).average().orElse(0));
    System.out.printf(
        Locale.ROOT,
        "all positions: mean loss %.3f points; choices %d, ranges apart %d, wrongly behind %d%n",
        all.stream().mapToDouble(Compared::loss).average().orElse(0),
        all.stream().mapToLong(one -> one.thorough().choices().size()).sum(),
        all.stream().mapToLong(Compared::apart).sum(),
        all.stream().mapToLong(Compared::wronglyBehind).sum());
  }
}
