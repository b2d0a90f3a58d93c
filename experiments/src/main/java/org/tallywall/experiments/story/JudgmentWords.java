package org.tallywall.experiments.story;

import java.util.function.IntFunction;
import org.tallywall.core.sheet.Move;
import org.tallywall.strategies.habit.Objection;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.reason.Reason;

/**
 * What a player thinks of its choices, in words. The numbers are its own judgment, in percent or in
 * times; none of them was measured.
 */
public final class JudgmentWords {
  private static final int TENTHS = 10;

  private final TileWords words;
  private final IntFunction<String> lines;

  /**
   * The words.
   *
   * @param words how tiles are named
   * @param lines how lines are named
   */
  public JudgmentWords(TileWords words, IntFunction<String> lines) {
    this.words = words;
    this.lines = lines;
  }

  /**
   * Why one tile goes and not another.
   *
   * @param rather the reason
   * @return as in {@code E goes rather than 9d: M1 needs 9d}
   */
  String rather(Reason.Rather rather) {
    String tile = words.tile(rather.tile());
    String other = words.tile(rather.other());
    return tile + " goes rather than " + other + ": " + cause(rather.cause(), tile, other);
  }

  private String cause(Reason.Cause cause, String tile, String other) {
    if (cause instanceof Reason.Cause.Needed needed) {
      return lines.apply(needed.line()) + " needs " + other + ", no hand in mind needs " + tile;
    } else if (cause instanceof Reason.Cause.KeepsMore more) {
      return "its rack keeps %s of its worth without %s, %s without %s"
          .formatted(percent(more.kept()), tile, percent(more.otherKept()), other);
    } else if (cause instanceof Reason.Cause.Safer safer) {
      return "it judges the risk that someone wins on it %s, on %s %s"
          .formatted(percent(safer.risk()), other, percent(safer.otherRisk()));
    } else if (cause instanceof Reason.Cause.MoreOut out) {
      return "neither matters more to the hand, and more of it are out (%s face up against %s)"
          .formatted(out.faceUp(), out.otherFaceUp());
    }
    return cause instanceof Reason.Cause.Either
        ? "one is as good as the other"
        : "one of its habits decides, or it played both out";
  }

  /**
   * Why a claim was left.
   *
   * @param left the reason
   * @return words that follow "but"
   */
  String left(Reason.LeftClaim left) {
    return switch (left.objection()) {
      case NONE -> "it overlooked that, or played it out and liked it less";
      case TOO_EARLY -> "it does not claim this early";
      case TOO_FAR -> "it does not claim from this far away";
      case UNWANTED -> "no hand it has in mind wants the tile";
      case JOKERS ->
          "that would show %s, more than it shows from this far away"
              .formatted(left.jokers() == 1 ? "a joker" : left.jokers() + " jokers");
      case NOT_WORTH_IT ->
          "by its own judgment that makes the rack worth %s times as much, and leaves %s of %s lines"
              .formatted(tenths(left.times()), left.linesLeft(), left.lines());
      case NOT_NEARER -> "it asks more of a claim than that";
      case FEW_GROUPS -> "it would have too few groups finished";
      case TELLS ->
          "that tells too much: %s of %s lines would be left"
              .formatted(left.linesLeft(), left.lines());
      case LEAVES_BADLY -> "that would leave a wait for a pair, or a joker to be redeemed";
      case GIVEN_UP -> "it has given the hand up";
    };
  }

  /**
   * A choice with what the player thinks of it.
   *
   * @param one the choice
   * @return as in {@code discard E: keeps 100% of the rack's worth, 0.4% risk}
   */
  public String ranked(Weighed one) {
    String move = one.move().text();
    if (one.move() instanceof Move.Nothing) {
      return move + ": leaves the rack as it is";
    } else if (one.move() instanceof Move.Claim) {
      String but = one.objection() == Objection.NONE ? "" : ", " + objection(one.objection());
      return move + ": makes the rack worth " + tenths(one.worth()) + " times as much" + but;
    }
    String risk = one.read() ? ", " + percent(one.risk()) + " risk that someone wins on it" : "";
    return move + ": keeps " + percent(one.worth()) + " of the rack's worth" + risk;
  }

  private static String objection(Objection objection) {
    return switch (objection) {
      case NONE -> "";
      case TOO_EARLY -> "too early for it";
      case TOO_FAR -> "too far away for it";
      case UNWANTED -> "wanted by no hand in mind";
      case JOKERS -> "more jokers than it shows from this far away";
      case NOT_WORTH_IT -> "not enough for it";
      case NOT_NEARER -> "too little nearer for it";
      case FEW_GROUPS -> "too few groups finished for it";
      case TELLS -> "tells the others too much";
      case LEAVES_BADLY -> "leaves a wait for a pair, or a joker to be redeemed";
      case GIVEN_UP -> "but the hand is given up";
    };
  }

  /** A share in percent, with a tenth where it is small or nearly whole. */
  private static String percent(double share) {
    long thousandths = Math.round(share * 1000);
    boolean whole = thousandths % TENTHS == 0;
    return thousandths / TENTHS + (whole ? "" : "." + thousandths % TENTHS) + "%";
  }

  private static String tenths(double times) {
    long tenths = Math.round(times * TENTHS);
    return tenths / TENTHS + "." + tenths % TENTHS;
  }
}
