package org.tallywall.experiments.deals;

import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;

/**
 * Two listeners that hear the same game.
 *
 * @param first hears every event first
 * @param second hears it next
 */
record BothListeners(GameListener first, GameListener second) implements GameListener {
  @Override
  public void began(OpenTable table) {
    first.began(table);
    second.began(table);
  }

  @Override
  public boolean wantsAims() {
    return first.wantsAims() || second.wantsAims();
  }

  @Override
  public boolean wantsAimsOf(int seat) {
    return (first.wantsAims() && first.wantsAimsOf(seat))
        || (second.wantsAims() && second.wantsAimsOf(seat));
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    first.passed(step, from, own, forwarded);
    second.passed(step, from, own, forwarded);
  }

  @Override
  public void stopAsked(int stoppers) {
    first.stopAsked(stoppers);
    second.stopAsked(stoppers);
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    first.courtesy(low, asked, lowGave, highGave);
    second.courtesy(low, asked, lowGave, highGave);
  }

  @Override
  public void drew(int seat, int tile) {
    first.drew(seat, tile);
    second.drew(seat, tile);
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    first.exchanged(seat, owner, exposure, tile);
    second.exchanged(seat, owner, exposure, tile);
  }

  @Override
  public void discarded(int seat, int tile) {
    first.discarded(seat, tile);
    second.discarded(seat, tile);
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    first.claimed(seat, from, tile, laid, also, alsoMahjong);
    second.claimed(seat, from, tile, laid, also, alsoMahjong);
  }

  @Override
  public void died(int seat) {
    first.died(seat);
    second.died(seat);
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    first.aimed(seat, moment, line);
    second.aimed(seat, moment, line);
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    first.declared(seat, by, from, also, alsoMahjong);
    second.declared(seat, by, from, also, alsoMahjong);
  }

  @Override
  public void ended(Outcome outcome) {
    first.ended(outcome);
    second.ended(outcome);
  }
}
