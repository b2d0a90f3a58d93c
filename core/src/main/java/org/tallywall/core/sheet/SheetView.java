package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.hand.ReachCache;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * What a seat knows by a sheet. Discards of which the sheet does not say the order are counted kind
 * by kind but are in no list, so that nothing can be read into an order that nobody knows; nobody
 * is dead, and nothing was heard but what the sheet says. The number of events is that of the
 * discards; it is no knowledge.
 */
public final class SheetView implements SeatView {
  private static final int NONE = SheetDraft.NONE;

  private final TableSetup setup;
  private final int seat;
  private final ReachCache cache;
  private final HandMeter meter = new HandMeter();
  private final Rack rack;
  private final List<List<Exposure>> laid = new ArrayList<>();
  private final int[] thrown = new int[Tile.KINDS];
  private final List<SheetDraft.Thrown> inOrder = new ArrayList<>();
  private final List<PassSeen> passes = new ArrayList<>();
  private final List<ExchangeSeen> exchanges = new ArrayList<>();
  private final int wall;
  private final Heard heard;
  private int offered = NONE;
  private int offeredBy = NONE;
  private int drawn = NONE;
  private boolean claimed;
  private int exchangesNow;
  private long events;

  SheetView(SheetDraft draft, TableSetup setup) {
    this.setup = setup;
    seat = draft.seat;
    cache = new ReachCache(setup.hands());
    rack = draft.rack.copy();
    draft.exposures.forEach(exposures -> laid.add(new ArrayList<>(exposures)));
    wall = SheetCounts.wall(draft, setup);
    if (draft.moment instanceof Moment.Offer offer) {
      offered = offer.tile();
      offeredBy = offer.from();
    } else if (draft.moment instanceof Moment.Turn turn) {
      drawn = turn.drawn();
      claimed = turn.claimed();
    }
    discards(draft);
    draft.passes.forEach((step, passed) -> passes.add(seen(step, passed)));
    if (draft.courtesy != null) {
      passes.add(seen(null, draft.courtesy));
    }
    heard = draft.heard;
    heard.exchanges.forEach(this::exchanged);
    events = Arrays.stream(thrown).sum();
  }

  private void discards(SheetDraft draft) {
    if (draft.says("unseen")) {
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        int copies = setup.rules().tiles().copies(kind);
        thrown[kind] = copies - rack.held(kind) - laidOpen(kind) - draft.unseen[kind];
      }
    } else {
      draft.discards.forEach(discard -> thrown[discard.kind()]++);
      if (offered != NONE) {
        thrown[offered]++;
      }
    }
    if (draft.inOrder()) {
      inOrder.addAll(draft.discards);
    }
    if (offered != NONE) {
      inOrder.add(new SheetDraft.Thrown(offered, offeredBy));
    }
  }

  private void exchanged(Heard.Redeemed one) {
    boolean said = one.exposure() != NONE;
    int exposure = said ? one.exposure() : SheetWriter.firstOf(one.tile(), laid.get(one.owner()));
    exchanges.add(new ExchangeSeen(one.seat(), one.owner(), Math.max(0, exposure), one.tile()));
    exchangesNow += one.now() ? 1 : 0;
  }

  private static PassSeen seen(PassStep step, SheetDraft.Passed passed) {
    List<Integer> blind = Arrays.stream(passed.blind).boxed().toList();
    return new PassSeen(step, sorted(passed.given), sorted(passed.received), blind);
  }

  private static List<Integer> sorted(List<Integer> kinds) {
    List<Integer> sorted = new ArrayList<>(kinds);
    Collections.sort(sorted);
    return List.copyOf(sorted);
  }

  private int laidOpen(int kind) {
    int open = 0;
    for (List<Exposure> exposures : laid) {
      for (Exposure exposure : exposures) {
        open += exposure.kind() == kind ? exposure.naturals() : 0;
        open += kind == Tile.JOKER ? exposure.jokers() : 0;
      }
    }
    return open;
  }

  /** Redeems a joker, as the seat chose. */
  void exchange(int owner, int index) {
    Exposure exposure = laid.get(owner).get(index);
    laid.get(owner).set(index, exposure.redeemed());
    rack.remove(exposure.kind());
    rack.add(Tile.JOKER);
    exchanges.add(new ExchangeSeen(seat, owner, index, exposure.kind()));
    exchangesNow++;
    events++;
  }

  /** Gives the tile on offer to the seat, which lays a group open. */
  void claim(int kind, int size, int jokers) {
    boolean joker = offered == Tile.JOKER;
    rack.remove(kind, size - 1 - jokers);
    rack.remove(Tile.JOKER, jokers);
    laid.get(seat).add(Exposure.of(kind, size, joker ? jokers + 1 : jokers));
    thrown[offered]--;
    inOrder.remove(inOrder.size() - 1);
    offered = NONE;
    offeredBy = NONE;
    claimed = true;
    events++;
  }

  @Override
  public int seat() {
    return seat;
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
  public List<Exposure> exposures(int of) {
    return Collections.unmodifiableList(laid.get(of));
  }

  @Override
  public Reach reach(int of) {
    return cache.reach(laid.get(of));
  }

  @Override
  public Reach reachWith(Exposure more) {
    return cache.reachWith(laid.get(seat), more);
  }

  @Override
  public boolean complete() {
    Rack whole = rack.copy();
    if (offered != NONE) {
      whole.add(offered);
    }
    meter.hold(whole);
    return meter.least(reach(seat)) == 0;
  }

  @Override
  public boolean dead(int of) {
    return heard.dead.contains(of);
  }

  @Override
  public int discards() {
    return inOrder.size();
  }

  @Override
  public int discardTile(int index) {
    return inOrder.get(index).kind();
  }

  @Override
  public int discardSeat(int index) {
    return inOrder.get(index).seat();
  }

  @Override
  public int faceUp(int kind) {
    return thrown[kind] + laidOpen(kind);
  }

  @Override
  public int discarded(int kind) {
    return thrown[kind];
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
    return drawn;
  }

  @Override
  public boolean claimedThisTurn() {
    return claimed;
  }

  @Override
  public int exchangesThisTurn() {
    return exchangesNow;
  }

  @Override
  public List<PassSeen> passes() {
    return Collections.unmodifiableList(passes);
  }

  @Override
  public List<Integer> stoppers() {
    return List.copyOf(heard.stoppers);
  }

  @Override
  public int courtesyAsked(int of) {
    return heard.courtesy[of];
  }

  @Override
  public List<ExchangeSeen> exchanges() {
    return Collections.unmodifiableList(exchanges);
  }

  @Override
  public List<LostClaim> lostClaims() {
    return List.copyOf(heard.lost);
  }

  @Override
  public long events() {
    return events;
  }
}
