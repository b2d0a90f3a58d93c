package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.experiments.run.RunLimits;

/**
 * Plays a number of worlds that is fixed beforehand after every choice of a question. Nothing drops
 * out and nothing ends early, so the mean of a difference is not bent by a look at it.
 */
public final class SameWorlds {
  private SameWorlds() {}

  /**
   * Plays.
   *
   * @param question the position, its choices, who plays on, and the seed
   * @param worlds how many worlds, 1 or more
   * @param run threads and patience with players
   * @return points of the seat that chooses, by choice and world
   * @throws org.tallywall.core.play.IllegalMoveException if a player answers with a move that is
   *     not legal; whatever else a player throws is thrown, too
   * @throws NoSuchMomentException if the rules have no such moment
   */
  public static int[][] points(ReviewQuestion question, int worlds, RunLimits run) {
    int choices = question.choices().size();
    List<Integer> all = new ArrayList<>();
    for (int choice = 0; choice < choices; choice++) {
      all.add(choice);
    }
    Round round = new Round(0, worlds, choices);
    try (RoundPlayer players = new RoundPlayer(question, run)) {
      players.play(round, all);
    } catch (IllegalArgumentException refused) {
      throw NoSuchMomentException.of(refused);
    }
    int[][] points = new int[choices][worlds];
    for (int choice = 0; choice < choices; choice++) {
      for (int world = 0; world < worlds; world++) {
        points[choice][world] = round.points(choice, world);
      }
    }
    return points;
  }
}
