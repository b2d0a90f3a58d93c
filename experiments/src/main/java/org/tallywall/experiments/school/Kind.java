package org.tallywall.experiments.school;

import java.util.Arrays;
import java.util.Optional;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;

/**
 * The kinds of decisions, in the order of a game. Every decision in which there is something to
 * choose is of one kind. Calls are told apart by what was answered, for the two go wrong in
 * different ways.
 */
public enum Kind {
  /** The first right. */
  FIRST_RIGHT("first-right", "the first right"),
  /** The first across. */
  FIRST_ACROSS("first-across", "the first across"),
  /** The first left. */
  FIRST_LEFT("first-left", "the first left"),
  /** Whether to stop the passes. */
  STOP("stop", "stop the passes, or go on"),
  /** The second left. */
  SECOND_LEFT("second-left", "the second left"),
  /** The second across. */
  SECOND_ACROSS("second-across", "the second across"),
  /** The last right. */
  LAST_RIGHT("last-right", "the last right"),
  /** How many tiles to offer across. */
  COURTESY_NUMBER("courtesy-number", "courtesy: how many"),
  /** Which tiles to give across. */
  COURTESY_TILES("courtesy-tiles", "courtesy: which tiles"),
  /** A discard that was called for an exposure. */
  CALLED("called", "a discard that was called"),
  /** A discard that could have been called and was not. */
  LET_LIE("let-lie", "a discard that was let lie"),
  /** A turn in which a joker could be redeemed. */
  REDEEM("redeem", "a joker could be redeemed"),
  /** A throw while more than two thirds of the wall are left. */
  THROW_EARLY("throw-early", "a throw, early in the wall"),
  /** A throw in the middle third of the wall. */
  THROW_MIDDLE("throw-middle", "a throw, middle of the wall"),
  /** A throw in the last third of the wall. */
  THROW_LATE("throw-late", "a throw, late in the wall"),
  /** Fourteen tiles that are a hand: whether to declare. */
  WIN("win", "a finished hand: declare, or not");

  private static final int THIRDS = 3;

  private final String id;
  private final String words;

  Kind(String id, String words) {
    this.id = id;
    this.words = words;
  }

  /**
   * The name in files.
   *
   * @return as in {@code first-right}
   */
  public String id() {
    return id;
  }

  /**
   * What a reader calls it.
   *
   * @return as in "the first right"
   */
  public String words() {
    return words;
  }

  /**
   * Finds a kind by its name in files.
   *
   * @param id the name
   * @return the kind, if there is one
   */
  static Optional<Kind> of(String id) {
    return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
  }

  /**
   * The kind of a decision.
   *
   * @param view what the seat knows, while it is asked
   * @param moment the question
   * @param move the answer
   * @return its kind; none where the rules leave one answer alone
   */
  static Optional<Kind> of(SeatView view, Moment moment, Move move) {
    if (moment instanceof Moment.Pass pass) {
      return Optional.of(pass(pass.step()));
    } else if (moment instanceof Moment.Stop) {
      return Optional.of(STOP);
    } else if (moment instanceof Moment.CourtesyAsk) {
      return Optional.of(COURTESY_NUMBER);
    } else if (moment instanceof Moment.CourtesyGive) {
      return Optional.of(COURTESY_TILES);
    } else if (view.complete()) {
      return Optional.of(WIN);
    } else if (moment instanceof Moment.Offer) {
      return offer(view, move);
    }
    return Optional.of(turn(view));
  }

  private static Kind pass(PassStep step) {
    return switch (step) {
      case RIGHT_1 -> FIRST_RIGHT;
      case ACROSS_1 -> FIRST_ACROSS;
      case LEFT_1 -> FIRST_LEFT;
      case LEFT_2 -> SECOND_LEFT;
      case ACROSS_2 -> SECOND_ACROSS;
      case RIGHT_2 -> LAST_RIGHT;
    };
  }

  private static Optional<Kind> offer(SeatView view, Move move) {
    if (LegalMoves.exposures(view).isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(move instanceof Move.Nothing ? LET_LIE : CALLED);
  }

  private static Kind turn(SeatView view) {
    boolean redeems =
        LegalMoves.turn(view).stream().anyMatch(TurnChoice.Exchange.class::isInstance);
    if (redeems) {
      return REDEEM;
    }
    int whole = view.table().rules().tiles().size() - Deal.DEALT;
    int left = THIRDS * view.wallLeft();
    if (left > 2 * whole) {
      return THROW_EARLY;
    }
    return left > whole ? THROW_MIDDLE : THROW_LATE;
  }
}
