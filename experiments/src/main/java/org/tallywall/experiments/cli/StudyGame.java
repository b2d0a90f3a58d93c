package org.tallywall.experiments.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.text.Nearest;
import org.tallywall.experiments.error.WrongInputException;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.RoundRobinTables;
import org.tallywall.experiments.study.Streams;
import org.tallywall.experiments.study.Study;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * One game of a study.
 *
 * @param players who sits where
 * @param luck which sample of the luck of decisions
 */
record StudyGame(List<PlayerSpec> players, int luck) {
  /** Finds the game by its deal, way of playing and studied seat; those may be null. */
  static StudyGame of(Study study, long deal, String arm, Integer seat) {
    Design design = study.design();
    if (design instanceof Design.Comparison comparison) {
      return ofArms(comparison.ways(), arm, seat);
    } else if (design instanceof Design.Branch branch) {
      refuse(arm);
      return new StudyGame(seated(branch.player(), branch.others(), seat, branch.seats()), 0);
    } else if (design instanceof Design.RoundRobin everyone) {
      refuse(arm);
      return ofRoundRobin(everyone, deal, seat);
    }
    refuse(arm);
    if (seat != null) {
      throw new WrongInputException("the study plays one fixed table; leave --seat out");
    }
    return new StudyGame(((Design.Table) design).players(), 0);
  }

  private static void refuse(String arm) {
    if (arm != null) {
      throw new WrongInputException(
          "the study has no ways of playing to choose from; leave --arm out");
    }
  }

  private static StudyGame ofArms(Design.Arms arms, String name, Integer seat) {
    List<String> names = arms.arms().stream().map(Arm::name).toList();
    if (name == null) {
      throw new WrongInputException(
          "--arm is missing; the study's ways of playing are: " + String.join(", ", names));
    }
    int arm = names.indexOf(name);
    if (arm < 0) {
      throw new WrongInputException(
          "no way of playing is called \"%s\"; the nearest is \"%s\""
              .formatted(name, Nearest.of(name, names)));
    }
    PlayerSpec player = arms.arms().get(arm).player();
    return new StudyGame(
        seated(player, arms.others(), seat, arms.seats()), arms.streams() == Streams.OWN ? arm : 0);
  }

  private static List<PlayerSpec> seated(
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

  private static StudyGame ofRoundRobin(Design.RoundRobin everyone, long deal, Integer turn) {
    if (turn == null || turn < 0 || turn > 3) {
      throw new WrongInputException(
          "the study plays each deal four times; write --seat 0 to 3 for the first to the fourth");
    }
    RoundRobinTables tables = new RoundRobinTables(everyone.players().size());
    List<Integer> table = tables.players(tables.of(deal));
    List<PlayerSpec> four = new ArrayList<>();
    for (int place : RoundRobinTables.seating(deal, turn)) {
      four.add(everyone.players().get(table.get(place)).player());
    }
    return new StudyGame(four, 0);
  }
}
