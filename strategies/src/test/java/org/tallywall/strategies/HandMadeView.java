package org.tallywall.strategies;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/** A position made by hand: what South sees, written down in words. */
public final class HandMadeView implements SeatView {
  private static final int SOUTH = 1;

  private final TableSetup setup;
  private final Rack rack;
  private final List<List<Exposure>> exposures =
      List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
  private final List<Integer> thrown = new ArrayList<>();
  private int offered = -1;
  private int offeredBy = -1;
  private int wall = 60;

  /** South holds these tiles; nothing else lies on the table. */
  public HandMadeView(ConcreteHands hands, String tiles) {
    this(hands, tiles, TableRules.STANDARD);
  }

  /** The same by other rules. */
  public HandMadeView(ConcreteHands hands, String tiles, TableRules rules) {
    setup = new TableSetup(hands, rules);
    rack = TileText.rack(tiles);
  }

  /** A seat has laid these open. */
  public HandMadeView exposed(int seat, String words) {
    exposures.get(seat).addAll(TileText.exposures(words));
    return this;
  }

  /** So many tiles are left. */
  public HandMadeView wall(int tiles) {
    wall = tiles;
    return this;
  }

  /** These were thrown, by East. */
  public HandMadeView thrown(String tiles) {
    Arrays.stream(TileText.rack(tiles).tiles()).forEach(thrown::add);
    return this;
  }

  /** This is on offer, thrown by East. */
  public HandMadeView offered(String tile) {
    return offered(0, tile);
  }

  /** This is on offer, thrown by a seat. */
  public HandMadeView offered(int seat, String tile) {
    offered = TileText.tile(tile);
    offeredBy = seat;
    thrown.add(offered);
    return this;
  }

  @Override
  public int seat() {
    return SOUTH;
  }

  @Override
  public TableSetup table() {
    return setup;
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
    return exposures.get(seat);
  }

  @Override
  public Reach reach(int seat) {
    return setup.hands().reach(exposures.get(seat));
  }

  @Override
  public Reach reachWith(Exposure more) {
    List<Exposure> all = new ArrayList<>(exposures.get(SOUTH));
    all.add(more);
    return setup.hands().reach(all);
  }

  @Override
  public boolean complete() {
    Rack all = rack.copy();
    if (offered >= 0 && offeredBy != SOUTH) {
      all.add(offered);
    }
    HandMeter meter = new HandMeter();
    meter.hold(all);
    return meter.least(reach(SOUTH)) == 0;
  }

  @Override
  public boolean dead(int seat) {
    return false;
  }

  @Override
  public int discards() {
    return thrown.size();
  }

  @Override
  public int discardTile(int index) {
    return thrown.get(index);
  }

  @Override
  public int discardSeat(int index) {
    return 0;
  }

  @Override
  public int faceUp(int kind) {
    int count = discarded(kind);
    for (List<Exposure> seat : exposures) {
      for (Exposure exposure : seat) {
        count += exposure.kind() == kind ? exposure.naturals() : 0;
        count += kind == Tile.JOKER ? exposure.jokers() : 0;
      }
    }
    return count;
  }

  @Override
  public int discarded(int kind) {
    return (int) thrown.stream().filter(tile -> tile == kind).count();
  }

  @Override
  public int wallLeft() {
    return wall;
  }

  @Override
  public int offered() {
    return offered;
  }

  @Override
  public int offeredBy() {
    return offeredBy;
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
    return 40;
  }
}
