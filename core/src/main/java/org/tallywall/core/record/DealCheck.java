package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.List;
import org.tallywall.core.play.Deal;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** Checks that wall and dice are those that the seed and the number of the deal give (1.2.5). */
final class DealCheck {
  private DealCheck() {}

  static void check(GameRecord game, TileSet tiles) {
    Deal deal = Deal.of(game.header().seed(), game.header().deal(), tiles);
    String luck = "with seed " + game.header().seed() + ", deal " + game.header().deal();
    require(game.wall().size() == deal.size(), "the wall has " + deal.size() + " tiles (rule 1.1)");
    for (int at = 0; at < deal.size(); at++) {
      int tile = game.wall().get(at);
      require(
          tile == deal.tile(at),
          luck
              + ", tile "
              + (at + 1)
              + " of the wall is "
              + Tile.symbol(deal.tile(at))
              + ", not "
              + Tile.symbol(tile)
              + " (rule 1.2.5)");
    }
    List<Integer> dice = List.of(deal.die(0), deal.die(1));
    require(game.dice().equals(dice), luck + ", the dice show " + dice + " (rule 1.2.5)");
  }
}
