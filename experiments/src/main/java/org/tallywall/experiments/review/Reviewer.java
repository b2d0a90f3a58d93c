package org.tallywall.experiments.review;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.tallywall.core.play.TableSetup;

/**
 * Reviews a position. It plays in rounds of worlds: in each world one game after every choice that
 * is still in. Any thread plays any world, and the games of a round are added up in their order, so
 * what comes out depends on the question and the number of games alone. Now and then, at numbers of
 * worlds fixed in advance, it looks which choices drop out and whether all is decided.
 */
public final class Reviewer {
  /** Worlds in a round. */
  private static final int ROUND = 64;

  /** A look comes after a tenth more worlds. */
  private static final int LOOKS = 10;

  /** Worlds are numbered up to here. */
  private static final int MOST_WORLDS = 1 << 30;

  private final ReviewQuestion question;
  private final ReviewLimits limits;
  private final Standings standings;
  private volatile boolean stopped;
  private int worlds;
  private int nextLook = ROUND;
  private long games;

  /**
   * A review that has not begun.
   *
   * @param question what is to be found out
   * @param limits what it may use
   */
  public Reviewer(ReviewQuestion question, ReviewLimits limits) {
    this.question = question;
    this.limits = limits;
    TableSetup setup = question.sheet().view().table();
    standings =
        new Standings(question.choices().size(), MostPoints.apart(setup), setup.hands().lines());
  }

  /**
   * Plays one game, to see whether games can be played on from a position at all.
   *
   * @param question what is to be found out
   * @throws NoSuchMomentException if the rules have no such moment
   */
  public static void tryOut(ReviewQuestion question) {
    try {
      new WorldPlayer(question).play(0, List.of(0), new Round(0, 1, 1));
    } catch (IllegalArgumentException refused) {
      throw NoSuchMomentException.of(refused);
    }
  }

  /** Has the review end with the present round. For any thread. */
  public void stop() {
    stopped = true;
  }

  /**
   * Reviews, once.
   *
   * @param listener is called after every round with what gives the standings; whether it asks for
   *     them changes nothing
   * @return what came out
   * @throws org.tallywall.core.play.IllegalMoveException if a player answers with a move that is
   *     not legal; whatever else a player throws is thrown, too
   */
  public Review review(Consumer<Supplier<Review>> listener) {
    long begin = limits.run().clock().getAsLong();
    Review.Ended ended = Review.Ended.NOT_YET;
    try (RoundPlayer players = new RoundPlayer(question, limits.run())) {
      while (ended == Review.Ended.NOT_YET) {
        boolean decided = round(players);
        ended = ended(decided, limits.run().clock().getAsLong() - begin);
        listener.accept(() -> known(Review.Ended.NOT_YET));
      }
    }
    return known(ended);
  }

  /** Plays a round; returns whether all is decided. */
  private boolean round(RoundPlayer players) {
    List<Integer> in = standings.in();
    long most = worlds == 0 ? Math.max(1, left()) : left();
    int next = (int) Math.min(Math.min(ROUND, most), MOST_WORLDS - worlds);
    if (next > 0) {
      Round round = new Round(worlds, next, question.choices().size());
      players.play(round, in);
      standings.add(round);
      worlds += next;
      games += (long) next * in.size();
    }
    if (worlds < nextLook) {
      return false;
    }
    nextLook = worlds + Math.max(ROUND, worlds / LOOKS);
    standings.dropOut();
    return standings.decided();
  }

  /** Worlds for which there are games left. */
  private long left() {
    return (limits.games() - games) / standings.in().size();
  }

  private Review.Ended ended(boolean decided, long nanos) {
    if (decided) {
      return question.choices().size() == 1 ? Review.Ended.ONE_CHOICE : Review.Ended.DECIDED;
    } else if (stopped) {
      return Review.Ended.STOPPED;
    } else if (left() < 1 || worlds == MOST_WORLDS) {
      return Review.Ended.GAMES;
    }
    return nanos >= limits.nanos() ? Review.Ended.TIME : Review.Ended.NOT_YET;
  }

  private Review known(Review.Ended ended) {
    return new Review(
        question.players().stream().map(Seated::name).toList(),
        question.seed(),
        worlds,
        games,
        Standings.CONFIDENCE,
        standings.results(question.choices()),
        ended);
  }
}
