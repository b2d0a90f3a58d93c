package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.review.Advisers;
import org.tallywall.experiments.review.Considered;
import org.tallywall.experiments.review.NoSuchMomentException;
import org.tallywall.experiments.review.ReviewQuestion;
import org.tallywall.experiments.review.SameWorlds;
import org.tallywall.experiments.review.Seated;
import org.tallywall.experiments.review.Shortlist;
import org.tallywall.experiments.review.UnlawfulChoiceException;
import org.tallywall.experiments.run.Patient;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunLimits;

/**
 * Finds out what a decision lost. The other choices are narrowed down in worlds of their own
 * (sequential halving: Karnin, Koren and Somekh, ICML 2013), always together with the choice made,
 * until one is left or all are clearly behind. If that one is ahead by more than its standard
 * error, the two meet again in fresh worlds, and only those are counted: the best of several always
 * looks better than it is in the games that it was picked by. How many worlds are counted is fixed
 * beforehand, so whatever rule picks the other choice, the mean is that of its true worth.
 */
final class Examiner {
  /** Others that are left after the first worlds. */
  private static final int FEW = 3;

  /** The others are clearly behind when the best of them is by so many standard errors. */
  private static final double CLEARLY = 2;

  /** Fresh worlds for each of those in which the two met. */
  static final int SECOND = 2;

  private static final int FIND = 0;
  private static final int FEWER = 1;
  private static final int MEET = 2;
  private static final int MEASURE = 3;

  private final SchoolQuestion question;
  private final RunLimits run;
  private final Lister lister;

  /** Names the choices of a position. */
  @FunctionalInterface
  interface Lister {
    List<Considered> choices(PositionSheet sheet, Seated asked, Move made);
  }

  Examiner(SchoolQuestion question, RunLimits run) {
    this(question, run, (sheet, asked, made) -> shortlist(sheet, asked, made, run));
  }

  Examiner(SchoolQuestion question, RunLimits run, Lister lister) {
    this.question = question;
    this.run = run;
    this.lister = lister;
  }

  private static List<Considered> shortlist(
      PositionSheet sheet, Seated asked, Move made, RunLimits run) {
    Pulse pulse = new Pulse();
    return Patient.wait(
        pulse,
        run,
        () ->
            new Shortlist(
                    sheet, asked, Advisers.usual(), player -> pulse.watched(player, sheet.seat()))
                .choices(List.of(sheet.choice(made.text()))));
  }

  /** Looks at a decision. */
  Judged judge(Found found) {
    PositionSheet sheet = PositionSheet.of("the game", found.sheet(), question.setup());
    try {
      List<Considered> choices =
          lister.choices(sheet, question.players().get(found.seat()), found.move());
      return new Look(found, sheet, choices).judged();
    } catch (UnlawfulChoiceException | NoSuchMomentException cannot) {
      return new Look(found, sheet, List.of()).unknown();
    }
  }

  /** One decision. */
  private final class Look {
    private final Found found;
    private final PositionSheet sheet;
    private final Considered made;
    private List<Considered> others;
    private final int choices;

    Look(Found found, PositionSheet sheet, List<Considered> choices) {
      this.found = found;
      this.sheet = sheet;
      this.choices = choices.size();
      this.made = new Considered(List.of(found.move()), List.of());
      this.others = choices.stream().filter(one -> !one.moves().equals(made.moves())).toList();
    }

    Judged judged() {
      int worlds = question.worlds();
      Met met = Met.NEVER;
      if (!others.isEmpty()) {
        met = narrowed(FEW, FIND, Math.max(1, worlds / 4));
        met = goesOn(met) ? narrowed(1, FEWER, Math.max(1, worlds / 2)) : met;
        met = goesOn(met) ? narrowed(1, MEET, worlds) : met;
      }
      boolean ahead = met.worlds() == worlds && met.errors() > 1;
      Met fresh = ahead ? narrowed(1, MEASURE, SECOND * worlds) : Met.NEVER;
      return result(others.isEmpty() ? "" : others.get(0).text(), met, fresh);
    }

    private static boolean goesOn(Met met) {
      return met.errors() >= 0 - CLEARLY;
    }

    Judged unknown() {
      return result("", Met.NEVER, Met.NEVER);
    }

    private Judged result(String other, Met first, Met second) {
      return new Judged(
          found.lot().number(),
          found.lot().kind(),
          found.lot().deal(),
          found.seat(),
          found.wall(),
          sheet.moment().text(),
          made.text(),
          choices,
          other,
          first,
          second);
    }

    /**
     * Leaves the others that do best in some worlds, the first of those that do as well, and tells
     * how the best of them met the choice made.
     */
    private Met narrowed(int left, int stage, int worlds) {
      List<Considered> tried = new ArrayList<>(others);
      tried.add(made);
      int[][] points = play(tried, stage, worlds);
      int[] own = points[others.size()];
      List<Integer> order = new ArrayList<>();
      List<Met> met = new ArrayList<>();
      for (int at = 0; at < others.size(); at++) {
        order.add(at);
        met.add(Met.of(points[at], own));
      }
      order.sort(Comparator.comparingLong(at -> 0 - met.get(at).sum()));
      others = order.subList(0, Math.min(left, order.size())).stream().map(others::get).toList();
      return met.get(order.get(0));
    }

    private int[][] play(List<Considered> tried, int stage, int worlds) {
      long luck =
          new RandomStream(
                  new StreamKey(
                      question.seed(), found.lot().number(), Purpose.RESAMPLING, 1, stage, 0))
              .nextLong();
      return SameWorlds.points(
          new ReviewQuestion(sheet, tried, question.players(), question.guesses(), luck),
          worlds,
          run);
    }
  }
}
