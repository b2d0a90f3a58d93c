package org.tallywall.core.play;

import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Everything that a view tells, as text. */
public final class ViewText {
  private ViewText() {}

  /** All of it. */
  public static String of(SeatView view) {
    StringBuilder text = new StringBuilder();
    Rack rack = new Rack();
    view.copyRack(rack);
    text.append("seat ").append(view.seat()).append(" rack ").append(rack);
    text.append(" of ").append(view.rackSize());
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      text.append('\n').append(Tile.symbol(kind)).append(' ').append(view.held(kind));
      text.append(' ').append(view.faceUp(kind)).append(' ').append(view.discarded(kind));
      text.append(' ').append(view.unseen(kind));
    }
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      text.append('\n').append(seat).append(view.exposures(seat)).append(view.dead(seat));
      text.append(' ').append(view.reach(seat).size()).append(view.courtesyAsked(seat));
    }
    text.append("\ndiscards");
    for (int discard = 0; discard < view.discards(); discard++) {
      text.append(' ').append(view.discardSeat(discard)).append(':');
      text.append(Tile.symbol(view.discardTile(discard)));
    }
    text.append("\nwall ").append(view.wallLeft()).append(" offered ").append(view.offered());
    text.append(" by ").append(view.offeredBy()).append(" drawn ").append(view.drawn());
    text.append(' ').append(view.claimedThisTurn()).append(view.exchangesThisTurn());
    text.append("\npasses ").append(view.passes()).append(" stop ").append(view.stoppers());
    text.append("\nexchanges ").append(view.exchanges()).append(" lost ").append(view.lostClaims());
    text.append("\nevents ").append(view.events());
    return text.toString();
  }
}
