package org.tallywall.experiments.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One game of a study.
 *
 * @param players who sits where
 * @param luck which sample of the luck of decisions
 */
public record StudyGame(List<PlayerSpec> players, int luck) {
  /**
   * Refuses a way of playing where a study has none.
   *
   * @param arm the way of playing; null where none is said
   * @throws WrongInputException if one is said
   */
  public static void refuse(String arm) {
    if (arm != null) {
      throw new WrongInputException(
          "the study has no ways of playing to choose from; leave --arm out");
    }
  }

  /**
   * Seats a studied player among others.
   *
   * @param player the studied player
   * @param others who sits in the other seats
   * @param seat where it sits; null where that is not said
   * @param seats where it may sit
   * @return four players, East first
   * @throws WrongInputException if it does not sit there, or must be said where it sits
   */
  public static List<PlayerSpec> seated(
      PlayerSpec player, PlayerSpec others, Integer seat, List<Integer> seats) {
    List<PlayerSpec> four = new ArrayList<>(Collections.nCopies(4, others));
    if (player.equals(others) && seat == null) {
      return four;
    }
    if (seat == null && seats.size() > 1) {
      throw new WrongInputException("--seat is missing; the studied player takes seats 0 to 3");
    }
    int studied = seat == null ? seats.get(0) : seat;
    if (!seats.contains(studied)) {
      throw new WrongInputException(
          seats.size() > 1
              ? "--seat is 0 (East) to 3, not " + seat
              : "the studied player sits at seat " + seats.get(0) + " alone");
    }
    four.set(studied, player);
    return four;
  }
}
