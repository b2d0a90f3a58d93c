package org.tallywall.core.play;

import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Tile;

/** Events in short words, for tests to compare. */
final class Course {
  private Course() {}

  static String word(GameEvent event) {
    if (event instanceof GameEvent.Draw draw) {
      return draw.seat() + " draws " + Tile.symbol(draw.tile());
    } else if (event instanceof GameEvent.Discard discard) {
      return discard.seat() + " throws " + Tile.symbol(discard.tile());
    } else if (event instanceof GameEvent.Claim claim) {
      return claim.seat() + " claims " + Tile.symbol(claim.tile()) + " for " + claim.size();
    } else if (event instanceof GameEvent.Exchange exchange) {
      return exchange.seat()
          + " gives "
          + Tile.symbol(exchange.tile())
          + " to "
          + exchange.owner()
          + "."
          + exchange.exposure();
    } else if (event instanceof GameEvent.Mahjong mahjong) {
      return mahjong.seat()
          + " wins by "
          + mahjong.by()
          + (mahjong.from() < 0 ? "" : " from " + mahjong.from());
    } else if (event instanceof GameEvent.Dead dead) {
      return dead.seat() + " is dead";
    } else if (event instanceof GameEvent.Pass pass) {
      return pass.from() + " passes " + pass.step();
    } else if (event instanceof GameEvent.Courtesy courtesy) {
      return "courtesy " + courtesy.seats() + " " + courtesy.asked();
    } else if (event instanceof GameEvent.Stop stop) {
      return "stop " + stop.seats();
    }
    return event instanceof GameEvent.WallGame ? "wall game" : "void";
  }
}
