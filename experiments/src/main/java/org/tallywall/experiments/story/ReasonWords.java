package org.tallywall.experiments.story;

import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.card.Line;
import org.tallywall.strategies.reason.Reason;

/** Reasons in words. */
public final class ReasonWords {
  private static final int WHOLE = 14;

  private final List<Line> lines;
  private final SeatNames seats;
  private final TileWords words;
  private final JudgmentWords judgment;

  /**
   * The words for games on a card.
   *
   * @param card the card
   * @param seats what the seats are called
   * @param words how tiles are named
   */
  public ReasonWords(Card card, SeatNames seats, TileWords words) {
    this.lines = card.lines();
    this.seats = seats;
    this.words = words;
    this.judgment = new JudgmentWords(words, this::id);
  }

  /**
   * Reasons in one line.
   *
   * @param reasons the reasons
   * @return their words with semicolons between
   */
  public String text(List<Reason> reasons) {
    StringBuilder text = new StringBuilder();
    for (Reason reason : reasons) {
      String between = reason instanceof Reason.LeftClaim ? ", but " : "; ";
      text.append(text.isEmpty() ? "" : between).append(text(reason));
    }
    return text.toString();
  }

  /**
   * A reason in words.
   *
   * @param reason the reason
   * @return as in {@code heading for L1, 5 away (9 of 14): needs 2b 33c}
   */
  public String text(Reason reason) {
    if (reason instanceof Reason.Aim aim) {
      return aim(aim);
    } else if (reason instanceof Reason.Rather rather) {
      return judgment.rather(rather);
    } else if (reason instanceof Reason.LeftClaim left) {
      return judgment.left(left);
    } else if (reason instanceof Reason.Complete complete) {
      return "complete: %s, worth %s".formatted(named(complete.line()), complete.value());
    } else if (reason instanceof Reason.Unneeded unneeded) {
      return "costs nothing: the nearest hand of all stays %s away".formatted(unneeded.away());
    } else if (reason instanceof Reason.Costs costs) {
      return "costs a tile or more: the nearest hand of all goes from %s to %s away"
          .formatted(costs.from(), costs.to());
    } else if (reason instanceof Reason.Nearer nearer) {
      return "the nearest hand comes from %s to %s away".formatted(nearer.from(), nearer.to());
    } else if (reason instanceof Reason.NothingNearer nothing) {
      return "a claim brings nothing nearer: the nearest hand is %s away, %s with it"
          .formatted(nothing.without(), nothing.with());
    } else if (reason instanceof Reason.WouldBring would) {
      return "a claim would bring the nearest hand from %s to %s away"
          .formatted(would.without(), would.with());
    }
    return ofTiles(reason);
  }

  private String aim(Reason.Aim aim) {
    String text =
        "heading for %s, %s away (%s of %s)"
            .formatted(named(aim.line()), aim.away(), WHOLE - aim.away(), WHOLE);
    if (aim.missing().isEmpty()) {
      return text;
    }
    return text + ": " + NeedWords.of(words, aim.missing(), aim.filled());
  }

  private String ofTiles(Reason reason) {
    if (reason instanceof Reason.Concealed concealed) {
      return id(concealed.line()) + " must stay concealed";
    } else if (reason instanceof Reason.ToSpare spare) {
      return (spare.tiles() == 0 ? "no tile" : tiles(spare.tiles())) + " the hand does not need";
    } else if (reason instanceof Reason.Blind blind) {
      return "passes on " + tiles(blind.tiles()) + " blind";
    } else if (reason instanceof Reason.JokersKept kept) {
      return "keeps " + (kept.jokers() == 0 ? "no joker" : jokers(kept.jokers())) + " back";
    } else if (reason instanceof Reason.Redeems redeems) {
      return "%s buys a joker from %s, which makes %s on the rack"
          .formatted(
              words.tile(redeems.tile()), seats.of(redeems.owner()), jokers(redeems.jokers()));
    } else if (reason instanceof Reason.Dead dead) {
      return "a hand of %s that wants it is dead: %s of %s in view"
          .formatted(id(dead.line()), dead.inView(), words.tile(dead.tile()));
    }
    return ofSafety(reason);
  }

  private String ofSafety(Reason reason) {
    if (reason instanceof Reason.HerTile hers) {
      return "%s can want it, with %s left to her"
          .formatted(seats.of(hers.seat()), left(hers.lines()));
    } else if (reason instanceof Reason.NotHers hers) {
      return "%s cannot want it, with %s left to her"
          .formatted(seats.of(hers.seat()), left(hers.lines()));
    } else if (reason instanceof Reason.NobodyWants) {
      return "nobody who shows an exposure can want it";
    } else if (reason instanceof Reason.LastOfItsKind last) {
      return "the other %s %s are out"
          .formatted(Sentences.number(last.faceUp()), words.several(last.tile()));
    } else if (reason instanceof Reason.JustWentRound round) {
      return words.tile(round.tile()) + " just went around";
    } else if (reason instanceof Reason.Step step) {
      return "%s: %s, %s left, at most %s on one rack"
          .formatted(
              step.stance().words(),
              step.away() > WHOLE
                  ? "every line is dead"
                  : "the nearest hand is " + step.away() + " away",
              count(step.draws(), "draw", "draws"),
              count(step.exposures(), "exposure", "exposures"));
    }
    return "nobody can take a joker";
  }

  private String id(int line) {
    return lines.get(line).id();
  }

  /** A line by its id and its nickname. */
  private String named(int line) {
    String say = lines.get(line).say();
    return say.isEmpty() ? id(line) : id(line) + " “" + say + "”";
  }

  private static String tiles(int number) {
    return count(number, "tile", "tiles");
  }

  private static String jokers(int number) {
    return count(number, "joker", "jokers");
  }

  private static String left(int lines) {
    return lines == 0 ? "no line" : count(lines, "line", "lines");
  }

  private static String count(int number, String one, String several) {
    return number + " " + (number == 1 ? one : several);
  }
}
