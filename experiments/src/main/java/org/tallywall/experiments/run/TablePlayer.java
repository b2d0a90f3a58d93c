package org.tallywall.experiments.run;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.IllegalMoveException;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.record.RecordJson;
import org.tallywall.experiments.study.Design;
import org.tallywall.experiments.study.Study;
import org.tallywall.experiments.tally.TallyListener;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Plays the blocks of a study with one fixed table. */
public final class TablePlayer implements BlockPlayer {
  private final Study study;
  private final Design.Table design;
  private final TableSetup setup;
  private final TallyListener tally;
  private final GameRecorder recorder = new GameRecorder();
  private final Game counted;
  private final Game recorded;

  /**
   * A table for one thread.
   *
   * @param study the study
   * @param design its design
   * @param setup the card and the rules, shared by all threads
   */
  public TablePlayer(Study study, Design.Table design, TableSetup setup) {
    this.study = study;
    this.design = design;
    this.setup = setup;
    this.tally = new TallyListener(setup);
    List<Player> players = design.players().stream().map(PlayerSpec::make).toList();
    GameListener both = new BothListeners(tally, recorder);
    this.counted = new Game(setup, players, tally);
    this.recorded = new Game(setup, players, both);
  }

  @Override
  public BlockResult play(Block block, RunState state) {
    List<String> records = new ArrayList<>();
    for (long deal = block.firstDeal(); deal < block.firstDeal() + block.deals(); deal++) {
      if (state.stopped()) {
        return null;
      }
      boolean kept = deal < study.extent().recorded();
      play(kept ? recorded : counted, deal);
      if (kept) {
        records.add(RecordJson.line(recorder.record(header(deal))));
      }
      state.dealPlayed();
    }
    return new BlockResult(block, tally.take(), records);
  }

  private void play(Game game, long deal) {
    try {
      game.play(Deal.of(study.extent().seed(), deal, setup.rules().tiles()));
    } catch (IllegalMoveException illegal) {
      throw new PlayerFaultException(deal, illegal.seat(), true, illegal);
    } catch (RuntimeException broken) {
      throw new PlayerFaultException(deal, game.lastAsked(), false, broken);
    }
  }

  private GameRecord.Header header(long deal) {
    return RecordHeaders.of(
        study, setup, deal, design.players().stream().map(PlayerSpec::written).toList());
  }
}
