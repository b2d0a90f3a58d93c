package org.tallywall.experiments.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.TableSetup;
import org.tallywall.experiments.deals.DealPlayer;
import org.tallywall.experiments.deals.Tables;
import org.tallywall.experiments.run.Block;
import org.tallywall.experiments.run.BlockPlayer;
import org.tallywall.experiments.run.BlockResult;
import org.tallywall.experiments.run.PlayerFaultException;
import org.tallywall.experiments.run.Pulse;
import org.tallywall.experiments.run.RunState;
import org.tallywall.experiments.run.SpoiledDeal;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.StudyTally;
import org.tallywall.experiments.tally.TallyPlan;

/** Plays the blocks of a study, whatever its design. */
public final class StudyPlayer implements BlockPlayer {
  private final Study study;
  private final TableSetup setup;
  private final Pulse pulse;
  private final PlayedDesign design;
  private final TallyPlan plan;
  private Tables tables;
  private DealPlayer deals;

  /**
   * Tables for one thread.
   *
   * @param study the study
   * @param setup the card and the rules, shared by all threads
   * @param pulse shows whether the players still answer
   */
  public StudyPlayer(Study study, TableSetup setup, Pulse pulse) {
    this.study = study;
    this.setup = setup;
    this.pulse = pulse;
    this.design = PlayedDesign.of(study);
    this.plan = PlayedDesign.planOf(study);
    sitDown();
  }

  /** New players at new tables: whoever broke down once may remember half a game. */
  private void sitDown() {
    tables =
        new Tables(
            study,
            setup,
            design.comparesCourses(),
            design::replayed,
            number -> Deal.of(study.extent().seed(), number, study.rules().tiles()),
            pulse);
    deals = design.deals(study, tables);
  }

  /**
   * Refuses a study that its players cannot play.
   *
   * @param study the study
   * @throws org.tallywall.experiments.error.WrongInputException with the reason
   */
  public static void check(Study study) {
    PlayedDesign.of(study).check();
  }

  /**
   * Plays a block. What was counted of a spoiled deal cannot be taken back, so a block with such
   * deals is played once to find them all, and once more without them. A player that remembers what
   * it should not may then spoil others, so this goes on until a whole block is played without a
   * fault, or there are more faults than are borne.
   */
  @Override
  public BlockResult play(Block block, RunState state) {
    Map<Long, SpoiledDeal> aside = new TreeMap<>();
    while (true) {
      Pass pass = new Pass(block, state, aside);
      BlockResult result = pass.play();
      if (result == null || pass.found.isEmpty()) {
        return result;
      }
      aside.putAll(pass.found);
    }
  }

  /** One attempt at a block. */
  private final class Pass {
    private final Block block;
    private final RunState state;
    private final Map<Long, SpoiledDeal> aside;
    private final Map<Long, SpoiledDeal> found = new TreeMap<>();
    private final StudyTally tally = new StudyTally(plan, setup);
    private final List<String> records = new ArrayList<>();

    Pass(Block block, RunState state, Map<Long, SpoiledDeal> aside) {
      this.block = block;
      this.state = state;
      this.aside = aside;
    }

    /** The result; null where the run was stopped. It is of no use if faults were found. */
    BlockResult play() {
      for (long deal = block.firstDeal(); deal < block.firstDeal() + block.deals(); deal++) {
        if (state.abandoned()) {
          return null;
        }
        if (!aside.containsKey(deal)) {
          play(deal);
        }
        if (aside.isEmpty()) {
          state.dealPlayed();
        }
      }
      return new BlockResult(block, tally, records, List.copyOf(aside.values()));
    }

    private void play(long deal) {
      tables.keep(deal < study.extent().recorded() ? records : null);
      try {
        deals.play(deal, tally);
      } catch (PlayerFaultException fault) {
        found.put(deal, fault.fault());
        if (aside.size() + found.size() > state.faultsBorne()) {
          throw fault;
        }
        sitDown();
      }
    }
  }
}
