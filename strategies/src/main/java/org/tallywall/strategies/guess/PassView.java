package org.tallywall.strategies.guess;

import java.util.Collections;
import java.util.List;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/**
 * What some seat knows in the passes, when the racks and the passes so far are guessed: the rest is
 * as the seat that guesses knows it, since nothing lies on the table yet.
 */
final class PassView implements SeatView {
  private final SeatView table;
  private final int seat;
  private final Rack rack;
  private final List<PassSeen> passes;

  /**
   * A view.
   *
   * @param table what the seat that guesses knows
   * @param seat the seat that is asked
   * @param rack what it holds; live
   * @param passes what it saw of the passes; live
   */
  PassView(SeatView table, int seat, Rack rack, List<PassSeen> passes) {
    this.table = table;
    this.seat = seat;
    this.rack = rack;
    this.passes = passes;
  }

  @Override
  public int seat() {
    return seat;
  }

  @Override
  public TableSetup table() {
    return table.table();
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
    return table.reach(seat);
  }

  @Override
  public Reach reachWith(Exposure more) {
    return table.reachWith(more);
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
    return table.wallLeft();
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
    return Collections.unmodifiableList(passes);
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
