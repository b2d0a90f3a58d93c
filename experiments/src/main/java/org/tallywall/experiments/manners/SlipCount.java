package org.tallywall.experiments.manners;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.experiments.page.StepNumbers;

/** Slips added up over games, and the first places of each. */
public final class SlipCount {
  private static final int ALL_ASKED = 3;

  private final Map<Slip, PerGame> each = new EnumMap<>(Slip.class);
  private final Map<Slip, List<Place>> places = new EnumMap<>(Slip.class);
  private final PerGame any = new PerGame();
  private final PerGame blind = new PerGame();
  private final PerGame stops = new PerGame();
  private final int shown;
  private long offers;
  private long threes;

  /**
   * Nothing counted yet.
   *
   * @param shown how many places of each kind are kept, 0 or more
   */
  public SlipCount(int shown) {
    this.shown = shown;
    for (Slip slip : Slip.values()) {
      each.put(slip, new PerGame());
      places.put(slip, new ArrayList<>());
    }
  }

  /**
   * Where a slip can be looked at.
   *
   * @param game the game's number in its file
   * @param step the step of the game's page at which the player decided
   * @param seat who, 0 to 3
   * @param move what she did, in the words of a position sheet
   */
  public record Place(long game, int step, int seat, String move) {}

  /**
   * Adds a game.
   *
   * @param game its record
   * @param found the slips in it
   */
  public void add(GameRecord game, List<FoundSlip> found) {
    StepNumbers steps = new StepNumbers(game);
    for (FoundSlip one : found) {
      List<Place> there = places.get(one.slip());
      if (there.size() < shown) {
        int step = steps.after(one.events());
        there.add(new Place(game.header().game(), step, one.seat(), one.move()));
      }
    }
    for (Slip slip : Slip.values()) {
      each.get(slip).add(found.stream().filter(one -> one.slip() == slip).count());
    }
    any.add(found.size());
    addCustoms(game.events());
  }

  private void addCustoms(List<GameEvent> events) {
    long unseen = 0;
    long stopped = 0;
    for (GameEvent event : events) {
      if (event instanceof GameEvent.Stop stop && !stop.seats().isEmpty()) {
        stopped = 1;
      } else if (event instanceof GameEvent.Pass pass && !pass.forwarded().isEmpty()) {
        unseen++;
      } else if (event instanceof GameEvent.Courtesy courtesy) {
        offers += courtesy.asked().size();
        threes += courtesy.asked().stream().filter(number -> number == ALL_ASKED).count();
      }
    }
    stops.add(stopped);
    blind.add(unseen);
  }

  /**
   * How often a slip was made.
   *
   * @param slip which
   * @return its numbers by game
   */
  public PerGame of(Slip slip) {
    return each.get(slip);
  }

  /**
   * How many slips of any kind were made.
   *
   * @return their numbers by game
   */
  public PerGame any() {
    return any;
  }

  /**
   * Whether somebody stopped the passes.
   *
   * @return 0 or 1 for each game
   */
  public PerGame stops() {
    return stops;
  }

  /**
   * In how many passes tiles went on unseen.
   *
   * @return their numbers by game
   */
  public PerGame blind() {
    return blind;
  }

  /**
   * How many of the offers across were three tiles.
   *
   * @return at most the offers
   */
  public long threes() {
    return threes;
  }

  /**
   * How many offers across were made.
   *
   * @return four a game at most
   */
  public long offers() {
    return offers;
  }

  /**
   * The first places of a slip.
   *
   * @param slip which
   * @return in the order of the games
   */
  public List<Place> places(Slip slip) {
    return List.copyOf(places.get(slip));
  }
}
