package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TableTally;

/**
 * One way of playing of a study, with what was counted.
 *
 * @param name what the study calls it
 * @param players who sits at each seat that is counted, in the order of {@code seats}
 * @param seats the seats that are counted
 * @param tally what was counted
 */
public record Way(String name, List<String> players, List<Integer> seats, TableTally tally) {
  /** The name of the one way of playing of a fixed table. */
  public static final String TABLE = "table";

  /**
   * Ways of playing of which each has one player.
   *
   * @param arms the players by their names
   * @param seats the seats that are counted
   * @param tally what was counted
   * @return in the order of the players
   */
  public static List<Way> of(List<Arm> arms, List<Integer> seats, StudyTally tally) {
    List<Way> ways = new ArrayList<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      String player = PlayerLabel.of(arms.get(arm).player());
      List<String> players = Collections.nCopies(seats.size(), player);
      ways.add(new Way(arms.get(arm).name(), players, seats, tally.arm(arm)));
    }
    return ways;
  }

  /**
   * Games won, over all seats counted.
   *
   * @return 0 or more
   */
  public long wins() {
    return tally.all().wins().sum().value().longValueExact();
  }

  /**
   * Games of the seats counted; one game counts for each of them.
   *
   * @return 0 or more
   */
  public long seatGames() {
    return tally.deals() * seats.size();
  }

  /**
   * Whether each deal is one game, so that games are independent.
   *
   * @return true for one game a deal
   */
  public boolean oneGame() {
    return tally.games() == tally.deals();
  }

  /**
   * Whether all four seats are counted.
   *
   * @return true for a whole table
   */
  public boolean wholeTable() {
    return seats.size() == Seats.COUNT;
  }
}
