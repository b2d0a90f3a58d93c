package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/** The tiles on the table while a record is checked. */
final class ReplayTable {
  final List<Rack> racks = new ArrayList<>();
  final List<List<Exposure>> exposures = new ArrayList<>();
  final boolean[] dead = new boolean[4];
  final int[] faceUp = new int[Tile.KINDS];
  private final List<Integer> wall;
  private int taken;
  int jokersThrown;

  ReplayTable(GameRecord game, TileSet set) {
    wall = game.wall();
    Rack all = Rack.of(wall.stream().mapToInt(Integer::intValue).toArray());
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      require(
          all.held(kind) == set.copies(kind),
          String.format(
              Locale.ROOT,
              "the wall holds %d of %s, not %d (rule 1.1)",
              all.held(kind),
              Tile.symbol(kind),
              set.copies(kind)));
    }
    for (int die : game.dice()) {
      require(die >= 1 && die <= 6, "a die shows 1 to 6 (rule 1.2.2)");
    }
    require(game.dice().size() == 2, "two dice are rolled (rule 1.2.2)");
    require(game.header().players().size() == 4, "four players sit at the table");
    deal();
  }

  /** Three rounds of four tiles each, then one each and one more to East (rule 1.3). */
  private void deal() {
    for (int seat = 0; seat < 4; seat++) {
      racks.add(new Rack());
      exposures.add(new ArrayList<>());
    }
    for (int round = 0; round < 3; round++) {
      for (int seat = 0; seat < 4; seat++) {
        for (int tile = 0; tile < 4; tile++) {
          racks.get(seat).add(wall.get(taken++));
        }
      }
    }
    for (int seat = 0; seat < 5; seat++) {
      racks.get(seat % 4).add(wall.get(taken++));
    }
  }

  int left() {
    return wall.size() - taken;
  }

  void give(int from, List<Integer> tiles, String rule) {
    for (int tile : tiles) {
      require(
          racks.get(from).held(tile) > 0,
          String.format(
              Locale.ROOT, "seat %d holds no %s (rule %s)", from, Tile.symbol(tile), rule));
      racks.get(from).remove(tile);
    }
  }

  void draw(int seat, int tile) {
    require(left() > 0, "the wall is empty (rule 7.2)");
    require(
        wall.get(taken) == tile,
        String.format(
            Locale.ROOT,
            "the next tile of the wall is %s, not %s",
            Tile.symbol(wall.get(taken)),
            Tile.symbol(tile)));
    taken++;
    racks.get(seat).add(tile);
  }

  void discard(int seat, int tile) {
    give(seat, List.of(tile), "3.2");
    faceUp[tile]++;
    jokersThrown += tile == Tile.JOKER ? 1 : 0;
  }

  void takeDiscard(int tile) {
    faceUp[tile]--;
    jokersThrown -= tile == Tile.JOKER ? 1 : 0;
  }

  void lay(int seat, Exposure exposure) {
    exposures.get(seat).add(exposure);
    faceUp[exposure.kind()] += exposure.naturals();
    faceUp[Tile.JOKER] += exposure.jokers();
  }

  void takeBack(int seat) {
    Exposure exposure = exposures.get(seat).remove(exposures.get(seat).size() - 1);
    faceUp[exposure.kind()] -= exposure.naturals();
    faceUp[Tile.JOKER] -= exposure.jokers();
  }

  void redeem(int seat, int owner, int index, int tile) {
    require(index < exposures.get(owner).size(), "there is no such exposure (rule 4.4.1)");
    Exposure exposure = exposures.get(owner).get(index);
    require(exposure.jokers() > 0, "the exposure " + exposure + " holds no joker (rule 4.4.1)");
    require(
        exposure.kind() == tile,
        "the joker stands for " + Tile.symbol(exposure.kind()) + " (rule 4.4.1)");
    give(seat, List.of(tile), "4.4.1");
    racks.get(seat).add(Tile.JOKER);
    exposures.get(owner).set(index, exposure.redeemed());
    faceUp[tile]++;
    faceUp[Tile.JOKER]--;
  }

  int live() {
    int live = 0;
    for (boolean gone : dead) {
      live += gone ? 0 : 1;
    }
    return live;
  }

  int nextLive(int seat) {
    int next = (seat + 1) % 4;
    while (dead[next]) {
      next = (next + 1) % 4;
    }
    return next;
  }

  /** Live seats hold 13 tiles, exposures included, the one on turn 14 (rule 3.1.1). */
  void count(int onTurn) {
    for (int seat = 0; seat < 4; seat++) {
      int tiles = racks.get(seat).total();
      for (Exposure exposure : exposures.get(seat)) {
        tiles += exposure.size();
      }
      int expected = seat == onTurn ? 14 : 13;
      require(
          dead[seat] || tiles == expected,
          String.format(
              Locale.ROOT, "seat %d has %d tiles, not %d (rule 3.1.1)", seat, tiles, expected));
    }
  }
}
