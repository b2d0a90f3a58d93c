package org.tallywall.experiments.reading;

import java.util.List;

/**
 * What one opponent may hold.
 *
 * @param seat her seat, 0 to 3
 * @param guesses how many guesses were made
 * @param linesLeft lines that her exposures and the tiles face up leave, in the order of the card
 * @param makeable how many of them can still be made if the tiles on the rack of the one who looks
 *     are counted, too, of which one of a kind may still be thrown; 0 where she shows nothing
 * @param lines the lines that were nearest to her rack, likeliest first; their chances sum to 1
 *     unless every hand was dead in some guess
 * @param away in how many guesses she was so many tiles away, from 0; the last stands for that many
 *     or more
 * @param stuck in how many guesses every hand left to her was dead
 * @param needs the natural kinds that would bring her nearer, most often first
 */
public record OpponentReading(
    int seat,
    int guesses,
    List<Integer> linesLeft,
    int makeable,
    List<LineChance> lines,
    List<Integer> away,
    int stuck,
    List<Need> needs) {
  /** The distance that stands for itself and all beyond. */
  public static final int FURTHEST = 6;

  /**
   * Copies the lists.
   *
   * @param seat her seat
   * @param guesses how many guesses were made
   * @param linesLeft lines left to her
   * @param makeable how many of them can still be made
   * @param lines the lines that were nearest
   * @param away guesses by distance
   * @param stuck guesses in which every hand was dead
   * @param needs kinds that would bring her nearer
   */
  public OpponentReading {
    linesLeft = List.copyOf(linesLeft);
    lines = List.copyOf(lines);
    away = List.copyOf(away);
    needs = List.copyOf(needs);
  }

  /**
   * A line that she may be playing.
   *
   * @param line its place on the card
   * @param chance the share of guesses in which it was nearest to her rack, 0 to 1; lines that were
   *     equally near share a guess
   */
  public record LineChance(int line, double chance) {}

  /**
   * A kind that she may need.
   *
   * @param kind a natural kind
   * @param nearer in how many guesses it would bring her nearer to a hand that is nearest
   */
  public record Need(int kind, int nearer) {}

  /**
   * How often she is at most so far away.
   *
   * @param most tiles away, from 1
   * @return the number of guesses
   */
  public int within(int most) {
    int sum = 0;
    for (int distance = 0; distance <= Math.min(most, FURTHEST); distance++) {
      sum += away.get(distance);
    }
    return sum;
  }
}
