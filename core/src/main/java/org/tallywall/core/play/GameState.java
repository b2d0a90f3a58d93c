package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.hand.ReachCache;
import org.tallywall.core.random.GameStreams;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.WallRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Everything on the table during a game. It is used again for the next game. */
final class GameState implements OpenTable {
  /** No tile, no seat. */
  static final int NONE = -1;

  /** Tiles of a seat whose turn it is not. */
  private static final int HELD = 13;

  final TableSetup setup;
  final ReachCache cache;
  final GameStreams streams = new GameStreams();
  final Rack[] racks = new Rack[Seats.COUNT];
  final LiveView[] views = new LiveView[Seats.COUNT];
  final boolean[] dead = new boolean[Seats.COUNT];
  final WinCheck wins;

  private final List<List<Exposure>> laid = new ArrayList<>();
  private final List<List<Exposure>> shown = new ArrayList<>();
  private final Reach[] reach = new Reach[Seats.COUNT];
  private final int[] faceUp = new int[Tile.KINDS];
  private final int[] thrown = new int[Tile.KINDS];
  private int[] discardTile = new int[256];
  private int[] discardSeat = new int[256];
  private int discards;
  private Deal deal;
  private final WallOrder wall = new WallOrder();
  private int lastTiles;
  private Purpose purpose = Purpose.DECISION;
  private int sample;

  long events;
  int offered;
  int offeredBy;
  int drawn;
  boolean claimedThisTurn;
  int exchangesThisTurn;
  boolean hotDiscard;
  int asked;
  final TableTalk talk = new TableTalk();

  GameState(TableSetup setup) {
    this.setup = setup;
    this.cache = new ReachCache(setup.hands());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks[seat] = new Rack();
      laid.add(new ArrayList<>());
      shown.add(Collections.unmodifiableList(laid.get(seat)));
      views[seat] = new LiveView(this, seat);
    }
    wins = new WinCheck(this);
  }

  /** Clears the table and deals (rule 1.3). */
  void begin(Deal newDeal) {
    deal = newDeal;
    streams.begin(deal.seed(), deal.number());
    purpose = Purpose.DECISION;
    sample = deal.sample();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks[seat].clear();
      laid.get(seat).clear();
      reach[seat] = setup.hands().closed();
    }
    Arrays.fill(dead, false);
    Arrays.fill(faceUp, 0);
    Arrays.fill(thrown, 0);
    talk.clear();
    wins.clear();
    discards = 0;
    events = 0;
    endTurn();
    for (int at = 0; at < Deal.DEALT; at++) {
      racks[Deal.dealtTo(at)].add(deal.tile(at));
    }
    wall.begin(Deal.DEALT, deal.size(), false);
    countLastTiles();
  }

  private void countLastTiles() {
    int rule = setup.rules().wall().lastTiles();
    lastTiles = rule == WallRules.BY_DICE ? 2 * (deal.die(0) + deal.die(1)) : rule;
  }

  /** Sets the table up as in a position. */
  void begin(Position position) {
    SeatView seen = position.view();
    deal = position.deal();
    streams.playOn(position.numbers());
    purpose = Purpose.ROLLOUT;
    sample = position.sample();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      racks[seat].set(position.rack(seat));
      laid.get(seat).clear();
      laid.get(seat).addAll(seen.exposures(seat));
      reach[seat] = seen.reach(seat);
      dead[seat] = seen.dead(seat);
    }
    seen.copyFaceUp(faceUp);
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      thrown[kind] = seen.discarded(kind);
    }
    talk.set(seen);
    wins.clear();
    discards = 0;
    for (int at = 0; at < seen.discards(); at++) {
      note(seen.discardSeat(at), seen.discardTile(at));
    }
    events = seen.events();
    wall.begin(deal.size() - seen.wallLeft(), deal.size(), position.ownRows());
    countLastTiles();
    endTurn();
    offered = seen.offered();
    offeredBy = seen.offeredBy();
    hotDiscard = offered != NONE && PayAll.hot(this);
    drawn = seen.drawn();
    claimedThisTurn = seen.claimedThisTurn();
    exchangesThisTurn = seen.exchangesThisTurn();
  }

  private void note(int seat, int tile) {
    if (discards == discardTile.length) {
      discardTile = Arrays.copyOf(discardTile, 2 * discards);
      discardSeat = Arrays.copyOf(discardSeat, 2 * discards);
    }
    discardTile[discards] = tile;
    discardSeat[discards++] = seat;
  }

  /** Numbers for a question to a seat, who is now being asked. */
  RandomStream decision(Question question, int seat) {
    return decision(question.moment(events), seat);
  }

  /** Numbers for a pass of a seat, who is now being asked. */
  RandomStream decision(PassStep step, int seat) {
    return decision(Question.moment(events, step), seat);
  }

  /** Numbers that say which incoming tiles a seat passes on unseen. */
  RandomStream blind(PassStep step, int seat) {
    boolean playedOn = purpose == Purpose.ROLLOUT;
    return streams.turnTo(
        playedOn ? purpose : Purpose.BLIND_PASS,
        playedOn ? Seats.COUNT + seat : seat,
        playedOn ? sample : deal.sample(),
        Question.moment(events, step));
  }

  private RandomStream decision(long moment, int seat) {
    asked = seat;
    return streams.turnTo(purpose, seat, sample, moment);
  }

  @Override
  public TableSetup setup() {
    return setup;
  }

  @Override
  public Deal deal() {
    return deal;
  }

  @Override
  public SeatView view(int seat) {
    return views[seat];
  }

  @Override
  public int wallLeft() {
    return deal.size() - wall.taken();
  }

  @Override
  public long winsOn(int seat) {
    int tiles = racks[seat].total();
    for (Exposure exposure : laid.get(seat)) {
      tiles += exposure.size();
    }
    if (dead[seat] || tiles != HELD || !ClaimWindow.mahjongAllowed(this)) {
      return 0;
    }
    long waits = wins.waits(seat);
    return setup.rules().jokers().discardClaimable() ? waits : waits & ~(1L << Tile.JOKER);
  }

  /** Whether tiles now come from the last wall (rule 7.4). */
  boolean inLastWall() {
    return wallLeft() < lastTiles;
  }

  int draw(int seat) {
    int tile = deal.tile(wall.draw(seat));
    racks[seat].add(tile);
    wins.gained(seat);
    drawn = tile;
    events++;
    return tile;
  }

  void discard(int seat, int tile) {
    racks[seat].remove(tile);
    note(seat, tile);
    faceUp[tile]++;
    thrown[tile]++;
    endTurn();
    offered = tile;
    offeredBy = seat;
    hotDiscard = PayAll.hot(this);
    events++;
  }

  private void endTurn() {
    offered = NONE;
    offeredBy = NONE;
    drawn = NONE;
    claimedThisTurn = false;
    exchangesThisTurn = 0;
  }

  void closeWindow() {
    offered = NONE;
    offeredBy = NONE;
  }

  /** Takes the latest discard off the table. */
  void takeDiscard() {
    discards--;
    faceUp[discardTile[discards]]--;
    thrown[discardTile[discards]]--;
  }

  void expose(int seat, int tile, Exposure exposure) {
    int fromTable = tile == Tile.JOKER ? 0 : 1;
    int jokersFromRack = exposure.jokers() - (1 - fromTable);
    racks[seat].remove(exposure.kind(), exposure.naturals() - fromTable);
    racks[seat].remove(Tile.JOKER, jokersFromRack);
    laid.get(seat).add(exposure);
    faceUp[exposure.kind()] += exposure.naturals();
    faceUp[Tile.JOKER] += exposure.jokers();
    refresh(seat);
    wins.gained(seat);
    claimedThisTurn = true;
    events++;
  }

  void exchange(int seat, int owner, int index) {
    Exposure exposure = laid.get(owner).get(index);
    laid.get(owner).set(index, exposure.redeemed());
    racks[seat].remove(exposure.kind());
    racks[seat].add(Tile.JOKER);
    faceUp[exposure.kind()]++;
    faceUp[Tile.JOKER]--;
    refresh(owner);
    wins.forget(owner);
    wins.gained(seat);
    exchangesThisTurn++;
    talk.exchanged(seat, owner, index, exposure.kind());
    events++;
  }

  /** Takes exposures of a dead hand back, out of play (rules 6.4.2 and 6.4.3). */
  void takeBack(int seat, int keep) {
    List<Exposure> exposures = laid.get(seat);
    while (exposures.size() > keep) {
      Exposure exposure = exposures.remove(exposures.size() - 1);
      faceUp[exposure.kind()] -= exposure.naturals();
      faceUp[Tile.JOKER] -= exposure.jokers();
      racks[seat].add(exposure.kind(), exposure.naturals());
      racks[seat].add(Tile.JOKER, exposure.jokers());
    }
    refresh(seat);
  }

  private void refresh(int seat) {
    reach[seat] = cache.reach(laid.get(seat));
  }

  List<Exposure> exposures(int seat) {
    return shown.get(seat);
  }

  Reach reach(int seat) {
    return reach[seat];
  }

  int faceUp(int kind) {
    return faceUp[kind];
  }

  void copyFaceUp(int[] into) {
    System.arraycopy(faceUp, 0, into, 0, Tile.KINDS);
  }

  int thrown(int kind) {
    return thrown[kind];
  }

  int discards() {
    return discards;
  }

  int discardTile(int index) {
    return discardTile[index];
  }

  int discardSeat(int index) {
    return discardSeat[index];
  }

  int liveSeats() {
    int live = 0;
    for (boolean gone : dead) {
      live += gone ? 0 : 1;
    }
    return live;
  }
}
