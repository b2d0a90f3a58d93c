package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Checks the books at every event of a game: all tiles are somewhere and none is twice, live
 * players hold 13 tiles and the one on turn 14, exposures are groups, points sum to what the rules
 * say.
 */
public final class BalancedBooks implements GameListener {
  private OpenTable table;
  private int onTurn;
  private int winningTile;

  /** How many events were checked. */
  public long checked;

  @Override
  public void began(OpenTable open) {
    table = open;
    onTurn = Seats.EAST;
    winningTile = GameState.NONE;
    check();
  }

  private void check() {
    checked++;
    tilesAreAllThere();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      SeatView view = table.view(seat);
      int tiles = view.rackSize();
      for (Exposure exposure : view.exposures(seat)) {
        tiles += exposure.size();
        assertThat(exposure.size()).isBetween(3, 6);
        assertThat(exposure.naturals()).isPositive();
      }
      if (!view.dead(seat)) {
        assertThat(tiles).as("tiles of seat %d", seat).isEqualTo(seat == onTurn ? 14 : 13);
      }
    }
  }

  private void tilesAreAllThere() {
    TileSet set = table.setup().rules().tiles();
    Rack all = new Rack();
    Deal deal = table.deal();
    for (int place = deal.size() - table.wallLeft(); place < deal.size(); place++) {
      all.add(deal.tile(place));
    }
    SeatView east = table.view(Seats.EAST);
    for (int discard = 0; discard < east.discards(); discard++) {
      all.add(east.discardTile(discard));
    }
    int[] faceUp = all(east);
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      for (Exposure exposure : east.exposures(seat)) {
        all.add(exposure.kind(), exposure.naturals());
        all.add(Tile.JOKER, exposure.jokers());
        faceUp[exposure.kind()] += exposure.naturals();
        faceUp[Tile.JOKER] += exposure.jokers();
      }
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        all.add(kind, table.view(seat).held(kind));
      }
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      if (all.held(kind) != set.copies(kind) || faceUp[kind] != east.faceUp(kind)) {
        throw new AssertionError(
            "%s: %d on the table of %d, %d face up, said to be %d"
                .formatted(
                    Tile.symbol(kind),
                    all.held(kind),
                    set.copies(kind),
                    faceUp[kind],
                    east.faceUp(kind)));
      }
    }
  }

  private static int[] all(SeatView view) {
    int[] thrown = new int[Tile.KINDS];
    for (int discard = 0; discard < view.discards(); discard++) {
      thrown[view.discardTile(discard)]++;
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      assertThat(view.discarded(kind)).isEqualTo(thrown[kind]);
    }
    return thrown;
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    check();
  }

  @Override
  public void stopAsked(int stoppers) {
    check();
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    check();
  }

  @Override
  public void drew(int seat, int tile) {
    onTurn = seat;
    check();
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    check();
  }

  @Override
  public void discarded(int seat, int tile) {
    onTurn = GameState.NONE;
    winningTile = tile;
    check();
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    onTurn = seat;
    check();
  }

  @Override
  public void died(int seat) {
    check();
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    check();
    if (onTurn == GameState.NONE) {
      assertThat(by).isEqualTo(WinBy.DISCARD);
      assertThat(table.view(seat).offered()).isEqualTo(winningTile);
    } else {
      assertThat(seat).isEqualTo(onTurn);
    }
  }

  @Override
  public void ended(Outcome outcome) {
    check();
    int sum = outcome.points().stream().mapToInt(Integer::intValue).sum();
    if (outcome.how() == Outcome.How.WALL_GAME) {
      int live = 0;
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        live += table.view(0).dead(seat) ? 0 : 1;
      }
      sum -= live * table.setup().rules().score().wallGame();
    }
    assertThat(sum).isZero();
    assertThat(outcome.win() == null).isEqualTo(outcome.how() != Outcome.How.MAHJONG);
    assertThat(outcome.wall()).isEqualTo(table.wallLeft());
  }
}
