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
  }

  /**
   * Reasons in one line.
   *
   * @param reasons the reasons
   * @return their words with semicolons between
   */
  public String text(List<Reason> reasons) {
    return String.join("; ", reasons.stream().map(this::text).toList());
  }

  /**
   * A reason in words.
   *
   * @param reason the reason
   * @return as in {@code heads for L1, 9 of 14 (5 away)}
   */
  public String text(Reason reason) {
    if (reason instanceof Reason.Aim aim) {
      return "heads for %s, %s of %s (%s away)"
          .formatted(id(aim.line()), WHOLE - aim.away(), WHOLE, aim.away());
    } else if (reason instanceof Reason.Complete complete) {
      return "complete: %s, worth %s".formatted(id(complete.line()), complete.value());
    } else if (reason instanceof Reason.Unneeded unneeded) {
      return "nothing lost by it, still %s away".formatted(unneeded.away());
    } else if (reason instanceof Reason.Costs costs) {
      return "it costs: %s away becomes %s".formatted(costs.from(), costs.to());
    } else if (reason instanceof Reason.Nearer nearer) {
      return "nearer: %s away becomes %s".formatted(nearer.from(), nearer.to());
    } else if (reason instanceof Reason.NothingNearer nothing) {
      return "nothing nearer: %s away as it is, %s"
          .formatted(nothing.without(), with(nothing.with()));
    } else if (reason instanceof Reason.WouldBring would) {
      return "left although nearer: %s away as it is, %s"
          .formatted(would.without(), with(would.with()));
    }
    return ofTiles(reason);
  }

  private static String with(int away) {
    return away + " with a claim";
  }

  private String ofTiles(Reason reason) {
    if (reason instanceof Reason.Concealed concealed) {
      return id(concealed.line()) + " must stay concealed";
    } else if (reason instanceof Reason.ToSpare spare) {
      return (spare.tiles() == 0 ? "no tile" : tiles(spare.tiles())) + " beside the hand in mind";
    } else if (reason instanceof Reason.Blind blind) {
      return tiles(blind.tiles()) + (blind.tiles() == 1 ? " goes" : " go") + " on unseen";
    } else if (reason instanceof Reason.JokersKept kept) {
      return kept.jokers() == 0 ? "no joker stays back" : jokers(kept.jokers()) + " kept back";
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
    } else if (reason instanceof Reason.LastOfItsKind last) {
      return "the last of its kind, the other %s are out".formatted(last.faceUp());
    } else if (reason instanceof Reason.JustWentRound round) {
      return words.tile(round.tile()) + " has just gone round";
    } else if (reason instanceof Reason.Step step) {
      return "%s: %s, %s left, at most %s on one rack"
          .formatted(
              step.stance().text().replace('-', ' '),
              step.away() > WHOLE ? "every line is dead" : step.away() + " away",
              count(step.draws(), "draw", "draws"),
              count(step.exposures(), "exposure", "exposures"));
    }
    return "nobody can take a joker";
  }

  private String id(int line) {
    return lines.get(line).id();
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
