package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.Choice;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.experiments.decisions.Decision;

/**
 * Goes through one player's decisions of a game, each with what that seat knew and nothing else: a
 * quick look at all of them, and a long look at those in which the choice made seemed to cost most.
 *
 * <p>The dearest of many always looks dearer than it is, because luck had a part in picking it. So
 * the long look plays in other guesses, with other luck, and the quick one's figures are forgotten.
 */
public final class GameReviewer {
  /** Choices of the quick look: with fewer of them, each is looked at in more games. */
  private static final int QUICKLY = 6;

  /** Choices of the long look: the one made, and those that did best at the quick look. */
  private static final int CLOSELY = 4;

  private final TableSetup setup;
  private final Lister lister;
  private final List<Seated> players;
  private final Guesses guesses;
  private final long seed;
  private volatile Reviewer present;
  private volatile boolean stopped;

  /**
   * A reviewer of games.
   *
   * @param setup the card and the rules of the game
   * @param lister names the choices of a position
   * @param players who is thought to play on, East's first
   * @param seed the seed of the quick look; the long one takes the next
   */
  public GameReviewer(TableSetup setup, Lister lister, List<Seated> players, long seed) {
    this(setup, lister, players, Guesses.USUAL, seed);
  }

  GameReviewer(TableSetup setup, Lister lister, List<Seated> players, Guesses guesses, long seed) {
    this.setup = setup;
    this.guesses = guesses;
    this.lister = lister;
    this.players = List.copyOf(players);
    this.seed = seed;
  }

  /** Names the choices that are looked at. */
  @FunctionalInterface
  public interface Lister {
    /**
     * The choices of a position.
     *
     * @param sheet the position
     * @param made the choice that was made
     * @return the choices, the one made among them
     * @throws UnlawfulChoiceException if the one made is not allowed here
     */
    List<Considered> choices(PositionSheet sheet, Choice made);
  }

  /** Hears how far it is. */
  @FunctionalInterface
  public interface Listener {
    /**
     * A decision is about to be looked at.
     *
     * @param number its number in this look, from 1
     * @param of how many this look has
     * @param closely whether this is the long look
     */
    void looks(int number, int of, boolean closely);
  }

  /** A decision that can be played on from. */
  private record Open(Decision decision, ReviewQuestion question) {}

  /** What a choice seemed to cost at the quick look. */
  private record Guessed(Open open, Review quick, double cost) {}

  /** Has the review end soon. For any thread. */
  public void stop() {
    stopped = true;
    Reviewer now = present;
    if (now != null) {
      now.stop();
    }
  }

  /**
   * Goes through the decisions.
   *
   * @param seat whose they are
   * @param decisions all decisions of that seat, in their order
   * @param quick what the quick look at one decision may use
   * @param thorough what the long look at one may use, by how many are looked at closely
   * @param most how many are looked at closely
   * @param listener hears how far it is
   * @return what came out
   */
  public GameReview review(
      int seat,
      List<Decision> decisions,
      ReviewLimits quick,
      IntFunction<ReviewLimits> thorough,
      int most,
      Listener listener) {
    List<Open> all = new ArrayList<>();
    int leftOut = 0;
    for (Decision decision : decisions) {
      Optional<Open> open = decision.lost() ? Optional.empty() : open(decision);
      leftOut += open.isPresent() ? 0 : 1;
      open.filter(one -> one.question().choices().size() > 1).ifPresent(all::add);
    }
    List<Guessed> dear = new ArrayList<>();
    for (int at = 0; at < all.size() && !stopped; at++) {
      listener.looks(at + 1, all.size(), false);
      Open one = all.get(at);
      Review first = play(asking(one, first(one), seed), quick);
      double cost = 0 - made(one, first).toBest().value();
      if (cost > 0 && !stopped) {
        dear.add(new Guessed(one, first, cost));
      }
    }
    dear.sort(Comparator.comparingDouble(one -> 0 - one.cost()));
    List<GameReview.Close> closely = new ArrayList<>();
    int looks = Math.min(most, dear.size());
    for (int at = 0; at < looks && !stopped; at++) {
      listener.looks(at + 1, looks, true);
      closely.add(closely(dear.get(at), thorough.apply(looks)));
    }
    closely.sort(
        Comparator.<GameReview.Close>comparingInt(one -> one.costs() ? 0 : 1)
            .thenComparingDouble(one -> 0 - one.made().cost().value()));
    return new GameReview(seat, all.size(), leftOut, closely, stopped);
  }

  private GameReview.Close closely(Guessed dear, ReviewLimits thorough) {
    Open one = dear.open();
    List<Considered> tried = dear.quick().choices().stream().map(ChoiceResult::choice).toList();
    Review review = play(asking(one, few(one, tried, CLOSELY), seed + 1), thorough);
    return new GameReview.Close(one.decision(), review, made(one, review));
  }

  private static List<Considered> first(Open one) {
    return few(one, one.question().choices(), QUICKLY);
  }

  /** The choice made and the first few others. */
  private static List<Considered> few(Open one, List<Considered> choices, int most) {
    List<Considered> few = new ArrayList<>(choices);
    few.sort(Comparator.comparingInt(choice -> isMade(one, choice) ? 0 : 1));
    return few.subList(0, Math.min(most, few.size()));
  }

  private ReviewQuestion asking(Open one, List<Considered> choices, long luck) {
    ReviewQuestion whole = one.question();
    return new ReviewQuestion(whole.sheet(), choices, players, whole.guesses(), luck);
  }

  private static boolean isMade(Open one, Considered choice) {
    return choice.moves().equals(List.of(one.decision().move()));
  }

  /** The position; nothing where it cannot be played on from. */
  private Optional<Open> open(Decision decision) {
    PositionSheet sheet = PositionSheet.of("the game", decision.sheet(), setup);
    try {
      List<Considered> choices = lister.choices(sheet, sheet.choice(decision.move().text()));
      ReviewQuestion question = new ReviewQuestion(sheet, choices, players, guesses, seed);
      if (!sheet.moment().inPlay()) {
        Reviewer.tryOut(question);
      }
      return Optional.of(new Open(decision, question));
    } catch (UnlawfulChoiceException | NoSuchMomentException cannot) {
      return Optional.empty();
    }
  }

  private Review play(ReviewQuestion question, ReviewLimits limits) {
    Reviewer reviewer = new Reviewer(question, limits);
    present = reviewer;
    if (stopped) {
      reviewer.stop();
    }
    return reviewer.review(known -> {});
  }

  private static ChoiceResult made(Open one, Review review) {
    return review.choices().stream()
        .filter(result -> isMade(one, result.choice()))
        .findFirst()
        .orElseThrow();
  }
}
