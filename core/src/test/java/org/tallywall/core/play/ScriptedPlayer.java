package org.tallywall.core.play;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;

/**
 * Answers from a script. Where the script is silent it passes and discards what no line wants,
 * never claims, declares, stops, exchanges or offers anything. It notes every question.
 */
public final class ScriptedPlayer implements Player {
  /** The questions in their order, as in "turn", "claim 4c", "pass right-1". */
  public final List<String> asked = new ArrayList<>();

  private final Map<PassStep, PassChoice> passes = new EnumMap<>(PassStep.class);
  private final Map<Integer, Deque<ClaimChoice>> claims = new TreeMap<>();
  private final List<TurnChoice> turns = new ArrayList<>();
  private BiConsumer<String, SeatView> watcher = (question, view) -> {};
  private boolean declares;
  private boolean stops;
  private int courtesy;
  private String courtesyTiles;

  /** Sets the pass of a step: own tiles; what lacks to three goes on blind. */
  public ScriptedPlayer pass(PassStep step, String own) {
    passes.put(step, PassChoice.of(TileText.rack(own).tiles()));
    return this;
  }

  /** Answers so the next time that a tile is on offer; further calls for later times. */
  public ScriptedPlayer claim(String tile, ClaimChoice choice) {
    claims.computeIfAbsent(TileText.tile(tile), kind -> new ArrayDeque<>()).add(choice);
    return this;
  }

  /** Answers the next questions of own turns so, one after the other; null for the usual answer. */
  public ScriptedPlayer turn(TurnChoice... choices) {
    turns.addAll(Arrays.asList(choices));
    return this;
  }

  /** Discards these in the next turns, single symbols separated by spaces; "-" as usual. */
  public ScriptedPlayer discard(String tiles) {
    for (String tile : tiles.split(" ")) {
      turns.add(tile.equals("-") ? null : TurnChoice.discard(TileText.tile(tile)));
    }
    return this;
  }

  /** Declares when complete before play. */
  public ScriptedPlayer declaresEarly() {
    declares = true;
    return this;
  }

  /** Stops the passes. */
  public ScriptedPlayer stops() {
    stops = true;
    return this;
  }

  /** Offers a number across, and gives the first of these tiles. */
  public ScriptedPlayer courtesy(int number, String tiles) {
    courtesy = number;
    courtesyTiles = tiles;
    return this;
  }

  /** Shows the view at every question to a test. */
  public ScriptedPlayer watch(BiConsumer<String, SeatView> look) {
    watcher = watcher.andThen(look);
    return this;
  }

  private void note(String question, SeatView view) {
    asked.add(question);
    watcher.accept(question, view);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    note("declare", view);
    return declares;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    note("pass " + step.text(), view);
    PassChoice scripted = passes.get(step);
    return scripted == null ? PassChoice.of(spare(view, 3)) : scripted;
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    note("stop", view);
    return stops;
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    note("courtesy number", view);
    return courtesy;
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    note("courtesy tiles " + number, view);
    return courtesyTiles == null
        ? spare(view, number)
        : Arrays.copyOf(TileText.rack(courtesyTiles).tiles(), number);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    note("claim " + Tile.symbol(view.offered()), view);
    Deque<ClaimChoice> scripted = claims.get(view.offered());
    return scripted == null || scripted.isEmpty() ? ClaimChoice.nothing() : scripted.poll();
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    note("turn", view);
    TurnChoice scripted = turns.isEmpty() ? null : turns.remove(0);
    if (scripted != null) {
      return scripted;
    }
    return TurnChoice.discard(view.drawn() >= 0 ? view.drawn() : spare(view, 1)[0]);
  }

  /** Tiles of the rack that no line wants, else its first naturals, else jokers. */
  private static int[] spare(SeatView view, int number) {
    Rack rack = new Rack();
    view.copyRack(rack);
    List<Integer> spare = new ArrayList<>();
    for (int kind : rack.tiles()) {
      if (StackedDeal.wantedByNone(kind)) {
        spare.add(kind);
      }
    }
    for (int kind : rack.tiles()) {
      if (!StackedDeal.wantedByNone(kind)) {
        spare.add(kind);
      }
    }
    return spare.stream().limit(number).mapToInt(Integer::intValue).toArray();
  }
}
