package org.tallywall.experiments.answer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
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
record Way(String name, List<String> players, List<Integer> seats, TableTally tally) {
  /** The name of the one way of playing of a fixed table. */
  static final String TABLE = "table";

  /** All ways of playing of a study, in its order. */
  static List<Way> of(Study study, StudyTally tally) {
    Design design = study.design();
    if (design instanceof Design.Comparison comparison) {
      return of(comparison.ways().arms(), comparison.ways().seats(), tally);
    } else if (design instanceof Design.RoundRobin everyone) {
      return of(everyone.players(), Design.ROTATE, tally);
    } else if (design instanceof Design.Branch branch) {
      return of(List.of(new Arm("as it plays", branch.player())), branch.seats(), tally);
    }
    Design.Table table = (Design.Table) design;
    List<String> players = table.players().stream().map(PlayerLabel::of).toList();
    return List.of(new Way(TABLE, players, Design.ROTATE, tally.arm(0)));
  }

  private static List<Way> of(List<Arm> arms, List<Integer> seats, StudyTally tally) {
    List<Way> ways = new ArrayList<>();
    for (int arm = 0; arm < arms.size(); arm++) {
      String player = PlayerLabel.of(arms.get(arm).player());
      List<String> players = Collections.nCopies(seats.size(), player);
      ways.add(new Way(arms.get(arm).name(), players, seats, tally.arm(arm)));
    }
    return ways;
  }

  /** Games won, over all seats counted. */
  long wins() {
    return tally.all().wins().sum().value().longValueExact();
  }

  /** Games of the seats counted; one game counts for each of them. */
  long seatGames() {
    return tally.deals() * seats.size();
  }

  /** Whether each deal is one game, so that games are independent. */
  boolean oneGame() {
    return tally.games() == tally.deals();
  }

  /** Whether all four seats are counted. */
  boolean wholeTable() {
    return seats.size() == Seats.COUNT;
  }
}
