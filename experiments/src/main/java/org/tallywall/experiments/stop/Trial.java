package org.tallywall.experiments.stop;

import java.util.function.DoubleUnaryOperator;
import org.tallywall.experiments.stats.SequentialTest;
import org.tallywall.experiments.stop.Stopping.Verdict;
import org.tallywall.experiments.tally.PairTally;

/** The sequential test of one comparison, to either side. */
final class Trial {
  private final SequentialTest side;
  private final int seats;
  private double more;
  private double fewer;
  private double notMore;
  private double notFewer;
  private Verdict verdict = Verdict.UNDECIDED;

  /**
   * A test that has seen nothing.
   *
   * @param side the test to one side
   * @param seats games that a deal sums up
   */
  Trial(SequentialTest side, int seats) {
    this.side = side;
    this.seats = seats;
  }

  /** Adds a block; where it decides, the verdict stays. */
  void add(PairTally block) {
    more += sum(block, side::forMore);
    fewer += sum(block, value -> side.forMore(-value));
    notMore += sum(block, side::againstMore);
    notFewer += sum(block, value -> side.againstMore(-value));
    if (verdict == Verdict.UNDECIDED) {
      verdict = now();
    }
  }

  private double sum(PairTally block, DoubleUnaryOperator evidence) {
    double sum = 0;
    for (int size = -seats; size <= seats; size++) {
      sum += block.ofSize(size) * evidence.applyAsDouble((double) size / seats);
    }
    return sum;
  }

  private Verdict now() {
    if (more >= side.found()) {
      return Verdict.MORE;
    } else if (fewer >= side.found()) {
      return Verdict.FEWER;
    }
    boolean none = notMore >= side.ruledOut() && notFewer >= side.ruledOut();
    return none ? Verdict.NONE : Verdict.UNDECIDED;
  }

  Verdict verdict() {
    return verdict;
  }
}
