package org.tallywall.strategies.guess;

import java.util.List;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/** What a seat knew before the first pass, worked back from what it knows later in the passes. */
final class BeforePasses implements SeatView {
  private final SeatView later;
  private final Rack rack;

  /**
   * Works it back.
   *
   * @param later what the seat knows in the passes
   * @param rack what it held before them
   */
  BeforePasses(SeatView later, Rack rack) {
    this.later = later;
    this.rack = rack;
  }

  @Override
  public int seat() {
    return later.seat();
  }

  @Override
  public TableSetup table() {
    return later.table();
  }

  @Override
  public int held(int kind) {
    return rack.held(kind);
  }

  @Override
  public int rackSize() {
    return rack.total();
  }

  @Override
  public void copyRack(Rack into) {
    into.set(rack);
  }

  @Override
  public List<Exposure> exposures(int seat) {
    return List.of();
  }

  @Override
  public Reach reach(int seat) {
    return later.reach(seat);
  }

  @Override
  public Reach reachWith(Exposure more) {
    return later.reachWith(more);
  }

  @Override
  public boolean complete() {
    return false;
  }

  @Override
  public boolean dead(int seat) {
    return false;
  }

  @Override
  public int discards() {
    return 0;
  }

  @Override
  public int discardTile(int index) {
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  public int discardSeat(int index) {
    throw new IndexOutOfBoundsException(index);
  }

  @Override
  public int faceUp(int kind) {
    return 0;
  }

  @Override
  public int discarded(int kind) {
    return 0;
  }

  @Override
  public int wallLeft() {
    return later.wallLeft();
  }

  @Override
  public int offered() {
    return -1;
  }

  @Override
  public int offeredBy() {
    return -1;
  }

  @Override
  public int drawn() {
    return -1;
  }

  @Override
  public boolean claimedThisTurn() {
    return false;
  }

  @Override
  public int exchangesThisTurn() {
    return 0;
  }

  @Override
  public List<PassSeen> passes() {
    return List.of();
  }

  @Override
  public List<Integer> stoppers() {
    return List.of();
  }

  @Override
  public int courtesyAsked(int seat) {
    return -1;
  }

  @Override
  public List<ExchangeSeen> exchanges() {
    return List.of();
  }

  @Override
  public List<LostClaim> lostClaims() {
    return List.of();
  }

  @Override
  public long events() {
    return 0;
  }
}
