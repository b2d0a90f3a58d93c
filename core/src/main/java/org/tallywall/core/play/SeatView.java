package org.tallywall.core.play;

import java.util.List;
import org.tallywall.core.hand.RackMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;

/**
 * All that one seat may know at a moment of the game, and nothing else. A view is live: it shows
 * the game as it is when it is asked, and is not to be kept beyond the question.
 */
public interface SeatView {
  /**
   * The seat that looks.
   *
   * @return 0 to 3; 0 is East
   */
  int seat();

  /**
   * The card and the rules.
   *
   * @return what lies on the table
   */
  TableSetup table();

  /**
   * How many tiles of a kind are on the own rack, exposures not counted.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  int held(int kind);

  /**
   * How many tiles are on the own rack, exposures not counted.
   *
   * @return 0 to 14
   */
  int rackSize();

  /**
   * Copies the own rack.
   *
   * @param into takes the tiles
   */
  void copyRack(Rack into);

  /**
   * The exposures of a seat.
   *
   * @param seat 0 to 3
   * @return a live, unmodifiable list in the order made
   */
  List<Exposure> exposures(int seat);

  /**
   * The concrete hands that the exposures of a seat leave possible.
   *
   * @param seat 0 to 3
   * @return the hands, dead ones included
   */
  Reach reach(int seat);

  /**
   * The concrete hands that a further exposure of one's own would leave possible.
   *
   * @param more the further exposure
   * @return the hands, dead ones included
   */
  Reach reachWith(Exposure more);

  /**
   * A meter that holds one's own rack, by the hands that one's exposures leave possible. All who
   * ask about this seat share it, so that a tile gained or lost is worked in once. What can be had
   * is as whoever asked last has set it. As the view, it is not to be kept beyond the question.
   *
   * @return the meter, ready to be asked
   */
  default RackMeter meter() {
    Rack rack = new Rack();
    copyRack(rack);
    RackMeter meter = new RackMeter();
    meter.hold(rack, reach(seat()));
    return meter;
  }

  /**
   * Whether one's own tiles are a hand of the card, the tile on offer counted when asked about a
   * claim.
   *
   * @return true if mahjong can be declared, as far as the tiles go
   */
  boolean complete();

  /**
   * Whether a seat's hand is dead.
   *
   * @param seat 0 to 3
   * @return true if it was called dead
   */
  boolean dead(int seat);

  /**
   * How many tiles were discarded and stayed on the table, the tile on offer included.
   *
   * @return 0 or more
   */
  int discards();

  /**
   * A discard.
   *
   * @param index from 0, in the order thrown
   * @return its kind
   */
  int discardTile(int index);

  /**
   * Who threw a discard.
   *
   * @param index from 0, in the order thrown
   * @return 0 to 3
   */
  int discardSeat(int index);

  /**
   * How many tiles of a kind lie face up: discards, the tile on offer, and all exposures.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  int faceUp(int kind);

  /**
   * Copies how many tiles of every kind lie face up.
   *
   * @param into takes a count for each of the 36 kinds
   */
  default void copyFaceUp(int[] into) {
    for (int kind = 0; kind < into.length; kind++) {
      into[kind] = faceUp(kind);
    }
  }

  /**
   * How many tiles of a kind were discarded and stayed on the table.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  int discarded(int kind);

  /**
   * How many tiles of a kind this seat cannot see: neither on its rack nor face up.
   *
   * @param kind a kind, 0 to 35
   * @return 0 or more
   */
  default int unseen(int kind) {
    return table().rules().tiles().copies(kind) - held(kind) - faceUp(kind);
  }

  /**
   * How many tiles are left in the wall.
   *
   * @return 0 to 99
   */
  int wallLeft();

  /**
   * The tile on offer, when asked about a claim.
   *
   * @return its kind, or -1
   */
  int offered();

  /**
   * Who threw the tile on offer.
   *
   * @return 0 to 3, or -1
   */
  int offeredBy();

  /**
   * The tile drawn in this turn, in one's own turn.
   *
   * @return its kind, or -1 in a turn that began with a claim or was East's first
   */
  int drawn();

  /**
   * Whether this turn, one's own, began with a claim.
   *
   * @return true after a claim for exposure
   */
  boolean claimedThisTurn();

  /**
   * How many exchanges were made in this turn, one's own.
   *
   * @return 0 or more
   */
  int exchangesThisTurn();

  /**
   * What this seat passed and got, pass by pass.
   *
   * @return the passes so far, the courtesy pass last
   */
  List<PassSeen> passes();

  /**
   * Who stopped the passes, as far as the table heard.
   *
   * @return seats, empty where nobody stopped or no name was heard
   */
  List<Integer> stoppers();

  /**
   * What a seat asked for in the courtesy pass.
   *
   * @param seat 0 to 3
   * @return 0 to 3, or -1 where it was not heard
   */
  int courtesyAsked(int seat);

  /**
   * The exchanges so far.
   *
   * @return in the order made
   */
  List<ExchangeSeen> exchanges();

  /**
   * The claims that lost to others, as far as the rules make them public.
   *
   * @return in the order made
   */
  List<LostClaim> lostClaims();

  /**
   * How many events the table has seen.
   *
   * @return 0 or more
   */
  long events();

  /**
   * One pass as a seat saw it.
   *
   * @param step the pass; null for the courtesy pass
   * @param given kinds given from the own rack, ascending
   * @param received kinds received and kept, ascending
   * @param blind how many tiles each seat passed on blind, by seat
   */
  record PassSeen(
      PassStep step, List<Integer> given, List<Integer> received, List<Integer> blind) {}

  /**
   * A joker exchange, which everybody sees.
   *
   * @param seat who redeemed
   * @param owner whose exposure it was
   * @param exposure which of the owner's exposures, from 0
   * @param tile the natural given
   */
  record ExchangeSeen(int seat, int owner, int exposure, int tile) {}

  /**
   * A claim that another player's claim beat.
   *
   * @param seat who claimed
   * @param tile the tile
   * @param mahjong whether it was claimed for mahjong
   */
  record LostClaim(int seat, int tile, boolean mahjong) {}
}
