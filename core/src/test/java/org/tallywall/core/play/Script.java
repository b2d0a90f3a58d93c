package org.tallywall.core.play;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/**
 * A player that answers from a script; where the script is silent it passes its first tiles, claims
 * nothing, declines nothing and throws what it drew, or else its first tile.
 */
final class Script implements Player {
  private final Map<PassStep, PassChoice> passes = new EnumMap<>(PassStep.class);
  private final Deque<Function<SeatView, TurnChoice>> turns = new ArrayDeque<>();
  private final Map<Integer, ClaimChoice> claims = new HashMap<>();
  private final List<Consumer<SeatView>> looks = new ArrayList<>();
  private final List<Consumer<SeatView>> claimLooks = new ArrayList<>();
  private boolean stops;
  private boolean declares = true;
  private boolean takesWins = true;
  private int courtesy;
  private int[] courtesyTiles = {};

  Script pass(PassStep step, String tiles) {
    passes.put(step, PassChoice.of(TileText.rack(tiles).tiles()));
    return this;
  }

  Script throwing(String... tiles) {
    for (String tile : tiles) {
      turns.add(view -> TurnChoice.discard(TileText.tile(tile)));
    }
    return this;
  }

  Script turn(TurnChoice choice) {
    turns.add(view -> choice);
    return this;
  }

  Script turn(Function<SeatView, TurnChoice> choice) {
    turns.add(choice);
    return this;
  }

  Script claiming(String tile, ClaimChoice choice) {
    claims.put(TileText.tile(tile), choice);
    return this;
  }

  Script looking(Consumer<SeatView> look) {
    looks.add(look);
    return this;
  }

  Script lookingAtOffers(Consumer<SeatView> look) {
    claimLooks.add(look);
    return this;
  }

  Script stopping() {
    stops = true;
    return this;
  }

  Script declining() {
    takesWins = false;
    declares = false;
    return this;
  }

  Script courtesy(int number, String tiles) {
    courtesy = number;
    courtesyTiles = TileText.rack(tiles).tiles();
    return this;
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return declares;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return passes.containsKey(step) ? passes.get(step) : PassChoice.of(first(view, 3));
  }

  private static int[] first(SeatView view, int number) {
    int[] tiles = new int[number];
    int count = 0;
    for (int kind = 0; kind < Tile.NATURALS && count < number; kind++) {
      for (int copy = 0; copy < view.held(kind) && count < number; copy++) {
        tiles[count++] = kind;
      }
    }
    return tiles;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return stops;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return courtesy;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return courtesyTiles.length == number ? courtesyTiles : first(view, number);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    claimLooks.forEach(look -> look.accept(view));
    ClaimChoice choice = claims.get(view.offered());
    if (choice != null) {
      return choice;
    }
    return view.complete() && takesWins ? ClaimChoice.mahjong() : ClaimChoice.nothing();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    looks.forEach(look -> look.accept(view));
    if (!turns.isEmpty()) {
      return turns.poll().apply(view);
    }
    if (view.complete() && takesWins) {
      return TurnChoice.mahjong();
    }
    return TurnChoice.discard(
        view.drawn() >= 0 && view.held(view.drawn()) > 0 ? view.drawn() : firstHeld(view));
  }

  private static int firstHeld(SeatView view) {
    int kind = 0;
    while (view.held(kind) == 0) {
      kind++;
    }
    return kind;
  }
}
