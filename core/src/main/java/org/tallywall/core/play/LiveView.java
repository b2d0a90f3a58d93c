package org.tallywall.core.play;

import java.util.List;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/** The view of a seat on a game that is being played. */
final class LiveView implements SeatView {
  private final GameState state;
  private final int seat;

  LiveView(GameState state, int seat) {
    this.state = state;
    this.seat = seat;
  }

  @Override
  public int seat() {
    return seat;
  }

  @Override
  public TableSetup table() {
    return state.setup;
  }

  @Override
  public int held(int kind) {
    return state.racks[seat].held(kind);
  }

  @Override
  public int rackSize() {
    return state.racks[seat].total();
  }

  @Override
  public void copyRack(Rack into) {
    into.set(state.racks[seat]);
  }

  @Override
  public List<Exposure> exposures(int of) {
    return state.exposures(of);
  }

  @Override
  public Reach reach(int of) {
    return state.reach(of);
  }

  @Override
  public Reach reachWith(Exposure more) {
    return state.cache.reachWith(state.exposures(seat), more);
  }

  @Override
  public RackMeter meter() {
    return state.wins.meter(seat);
  }

  @Override
  public boolean complete() {
    boolean offer = state.offered != GameState.NONE && state.offeredBy != seat;
    return offer ? state.wins.completeWith(seat, state.offered) : state.wins.complete(seat);
  }

  @Override
  public boolean dead(int of) {
    return state.dead[of];
  }

  @Override
  public int discards() {
    return state.discards();
  }

  @Override
  public int discardTile(int index) {
    return state.discardTile(index);
  }

  @Override
  public int discardSeat(int index) {
    return state.discardSeat(index);
  }

  @Override
  public int faceUp(int kind) {
    return state.faceUp(kind);
  }

  @Override
  public void copyFaceUp(int[] into) {
    state.copyFaceUp(into);
  }

  @Override
  public int discarded(int kind) {
    return state.thrown(kind);
  }

  @Override
  public int wallLeft() {
    return state.wallLeft();
  }

  @Override
  public int offered() {
    return state.offered;
  }

  @Override
  public int offeredBy() {
    return state.offeredBy;
  }

  @Override
  public int drawn() {
    return ownTurn() ? state.drawn : GameState.NONE;
  }

  @Override
  public boolean claimedThisTurn() {
    return ownTurn() && state.claimedThisTurn;
  }

  @Override
  public int exchangesThisTurn() {
    return ownTurn() ? state.exchangesThisTurn : 0;
  }

  private boolean ownTurn() {
    int exposed = 0;
    for (Exposure exposure : state.exposures(seat)) {
      exposed += exposure.size();
    }
    return rackSize() + exposed == 14;
  }

  @Override
  public List<PassSeen> passes() {
    return state.talk.passes(seat);
  }

  @Override
  public List<Integer> stoppers() {
    return state.talk.stoppers();
  }

  @Override
  public int courtesyAsked(int of) {
    return state.talk.courtesyAsked(of);
  }

  @Override
  public List<ExchangeSeen> exchanges() {
    return state.talk.exchanges();
  }

  @Override
  public List<LostClaim> lostClaims() {
    return state.talk.lost();
  }

  @Override
  public long events() {
    return state.events;
  }
}
