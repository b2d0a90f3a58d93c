package org.tallywall.experiments.design.branch;

import org.tallywall.experiments.tally.StudyTally;

/** What the branches of one deal came to, square by square. */
final class Squares {
  private final int others;
  private final int[] reached;
  private final long[] wall;
  private final long[][][] differences;

  Squares(BranchDesign design, int measures) {
    int cells = design.cells().count();
    this.others = design.options().size() - 1;
    this.reached = new int[cells];
    this.wall = new long[cells];
    this.differences = new long[cells][others][measures];
  }

  /** Adds a branch: for each option and measure the value. */
  void add(BranchPlayer player, long[][] values) {
    int cell = player.cell();
    reached[cell]++;
    wall[cell] += player.wall();
    for (int option = 0; option < others; option++) {
      for (int measure = 0; measure < values[0].length; measure++) {
        differences[cell][option][measure] += values[option + 1][measure] - values[0][measure];
      }
    }
  }

  /** Counts the deal. */
  void count(int seats, StudyTally into) {
    for (int cell = 0; cell < reached.length; cell++) {
      for (int option = 0; option < others; option++) {
        into.firing(cell * others + option)
            .addDeal(seats, reached[cell], wall[cell], differences[cell][option]);
      }
    }
  }
}
