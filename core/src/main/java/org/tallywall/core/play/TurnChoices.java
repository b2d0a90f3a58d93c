package org.tallywall.core.play;

import org.tallywall.core.tile.Tile;

/** The ready-made turn choices. */
final class TurnChoices {
  static final TurnChoice MAHJONG = new TurnChoice.Mahjong(ClaimChoice.Mahjong.BEST_LINE);
  static final TurnChoice[][] EXCHANGE = new TurnChoice[Seats.COUNT][4];
  static final TurnChoice[] DISCARD = new TurnChoice[Tile.KINDS];

  static {
    for (int owner = 0; owner < Seats.COUNT; owner++) {
      for (int exposure = 0; exposure < 4; exposure++) {
        EXCHANGE[owner][exposure] = new TurnChoice.Exchange(owner, exposure);
      }
    }
    for (int tile = 0; tile < Tile.KINDS; tile++) {
      DISCARD[tile] = new TurnChoice.Discard(tile);
    }
  }

  private TurnChoices() {}
}
