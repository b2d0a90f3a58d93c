package org.tallywall.experiments.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;

/** Plays the blocks of a study, whatever its design. */
public final class StudyPlayer implements BlockPlayer {
  private final Study study;
  private final TallyPlan plan;
  private final Tables tables;
  private final DealPlayer deals;

  /**
   * Tables for one thread.
   *
   * @param study the study
   * @param setup the card and the rules, shared by all threads
   */
  public StudyPlayer(Study study, TableSetup setup) {
    this.study = study;
    this.plan = Plans.of(study);
    this.tables =
        new Tables(
            study,
            setup,
            Plans.compares(study.design()),
            number -> Deal.of(study.extent().seed(), number, study.rules().tiles()));
    this.deals = deals();
  }

  private DealPlayer deals() {
    Design design = study.design();
    if (design instanceof Design.Arms arms) {
      return new ArmDeals(study, arms, tables);
    } else if (design instanceof Design.Sweep sweep) {
      return new ArmDeals(study, sweep.arms(), tables);
    } else if (design instanceof Design.RoundRobin everyone) {
      return new RoundRobinDeals(everyone, tables);
    } else if (design instanceof Design.Branch branch) {
      return new BranchDeals(study, branch, tables);
    }
    return new TableDeals((Design.Table) design, tables);
  }

  /**
   * Refuses a study that its players cannot play.
   *
   * @param study the study
   * @throws org.tallywall.experiments.error.WrongInputException with the reason
   */
  public static void check(Study study) {
    if (study.design() instanceof Design.Branch branch) {
      BranchDeals.check(branch);
    }
  }

  @Override
  public BlockResult play(Block block, RunState state) {
    Map<Long, Fault> faults = new TreeMap<>();
    BlockResult result = null;
    long reported = 0;
    while (result == null) {
      Pass pass = new Pass(block, state, faults, reported);
      try {
        result = pass.play();
        if (result == null) {
          return null;
        }
      } catch (PlayerFaultException fault) {
        faults.put(fault.fault().deal(), fault.fault());
        if (faults.size() > state.faultsBorne()) {
          throw fault;
        }
        // What was counted of the spoilt deal cannot be taken back: the block is played again.
        reported = Math.max(reported, pass.played);
      }
    }
    return result;
  }

  /** One attempt at a block. */
  private final class Pass {
    private final Block block;
    private final RunState state;
    private final Map<Long, Fault> faults;
    private final long reported;
    private final StudyTally tally = new StudyTally(plan, tables.setup());
    private final List<String> records = new ArrayList<>();
    private long played;

    Pass(Block block, RunState state, Map<Long, Fault> faults, long reported) {
      this.block = block;
      this.state = state;
      this.faults = faults;
      this.reported = reported;
    }

    BlockResult play() {
      for (long deal = block.firstDeal(); deal < block.firstDeal() + block.deals(); deal++) {
        if (state.stopped()) {
          return null;
        }
        if (!faults.containsKey(deal)) {
          tables.keep(deal < study.extent().recorded() ? records : null);
          deals.play(deal, tally);
        }
        if (++played > reported) {
          state.dealPlayed();
        }
      }
      return new BlockResult(block, tally, records, List.copyOf(faults.values()));
    }
  }
}
