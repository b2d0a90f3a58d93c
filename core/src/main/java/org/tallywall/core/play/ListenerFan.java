package org.tallywall.core.play;

import java.util.List;
import java.util.function.Consumer;
import org.tallywall.core.tile.Exposure;

/** Lets several listeners hear the same game: each event goes to all of them in their order. */
public final class ListenerFan implements GameListener {
  private final List<GameListener> all;

  /**
   * Brings listeners together.
   *
   * @param listeners in the order in which they hear
   */
  public ListenerFan(GameListener... listeners) {
    all = List.of(listeners);
  }

  private void each(Consumer<GameListener> event) {
    all.forEach(event);
  }

  @Override
  public void began(OpenTable table) {
    each(one -> one.began(table));
  }

  @Override
  public boolean wantsAims() {
    return all.stream().anyMatch(GameListener::wantsAims);
  }

  @Override
  public boolean wantsAimsOf(int seat) {
    for (GameListener one : all) {
      if (one.wantsAims() && one.wantsAimsOf(seat)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    each(one -> one.passed(step, from, own, forwarded));
  }

  @Override
  public void stopAsked(int stoppers) {
    each(one -> one.stopAsked(stoppers));
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    each(one -> one.courtesy(low, asked, lowGave, highGave));
  }

  @Override
  public void drew(int seat, int tile) {
    each(one -> one.drew(seat, tile));
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    each(one -> one.exchanged(seat, owner, exposure, tile));
  }

  @Override
  public void discarded(int seat, int tile) {
    each(one -> one.discarded(seat, tile));
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    each(one -> one.claimed(seat, from, tile, laid, also, alsoMahjong));
  }

  @Override
  public void died(int seat) {
    each(one -> one.died(seat));
  }

  @Override
  public void aimed(int seat, AimMoment moment, int line) {
    each(one -> one.aimed(seat, moment, line));
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    each(one -> one.declared(seat, by, from, also, alsoMahjong));
  }

  @Override
  public void ended(Outcome outcome) {
    each(one -> one.ended(outcome));
  }
}
