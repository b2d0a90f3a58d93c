package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.ConcreteHand;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Calls hands dead that all can see to be impossible (section 6), at tables that do so. Only
 * discards and exposures count as evidence (rule 6.2.3); the discard on offer can still be had by
 * all but the discarder.
 */
final class DeadCalls {
  private final GameState state;
  private final HandMeter meter = new HandMeter();
  private final int[] obtainable = new int[Tile.KINDS];

  DeadCalls(GameState state) {
    this.state = state;
  }

  /**
   * The live seats whose every fitting line is impossible, called one after the other. The last
   * live player has nobody left to be called by (rule 6.2.1).
   */
  List<Integer> call() {
    List<Integer> called = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT && state.liveSeats() > 1; seat++) {
      if (!state.dead[seat] && impossible(seat)) {
        state.dead[seat] = true;
        takeBack(seat);
        called.add(seat);
      }
    }
    return called;
  }

  private boolean impossible(int seat) {
    TileSet tiles = state.setup.rules().tiles();
    for (int kind = 0; kind < Tile.NATURALS; kind++) {
      obtainable[kind] = tiles.copies(kind) - state.faceUp(kind);
    }
    obtainable[Tile.JOKER] = tiles.jokers() - state.thrown(Tile.JOKER);
    boolean jokerBarred =
        state.offered == Tile.JOKER && !state.setup.rules().jokers().discardClaimable();
    if (seat != state.offeredBy && !jokerBarred) {
      obtainable[state.offered]++;
    }
    meter.obtainable(obtainable);
    Reach reach = state.reach(seat);
    for (int at = 0; at < reach.size(); at++) {
      if (!meter.dead(reach, at)) {
        return false;
      }
    }
    return true;
  }

  /** What goes back to the rack: exposures that no exposable line allows (6.4.2, 6.4.3). */
  private void takeBack(int seat) {
    List<Exposure> exposures = state.exposures(seat);
    if (state.reach(seat).size() > 0 || exposures.isEmpty()) {
      return;
    }
    state.takeBack(seat, fitsConcealedLine(exposures) ? 0 : exposures.size() - 1);
  }

  private boolean fitsConcealedLine(List<Exposure> exposures) {
    for (int at = 0; at < state.setup.hands().size(); at++) {
      ConcreteHand hand = state.setup.hands().hand(at);
      int line = state.setup.hands().lineOf(at);
      if (state.setup.hands().line(line).concealed() && Reach.contains(hand, exposures)) {
        return true;
      }
    }
    return false;
  }
}
