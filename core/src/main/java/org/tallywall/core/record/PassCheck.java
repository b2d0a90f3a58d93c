package org.tallywall.core.record;

import static org.tallywall.core.record.BreachException.require;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tallywall.core.rules.PassRules;
import org.tallywall.core.text.Shown;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Checks the passes of a record (section 2). */
final class PassCheck {
  private static final List<String> FIRST = List.of("right-1", "across-1", "left-1");
  private static final List<String> SECOND = List.of("left-2", "across-2", "right-2");

  private final ReplayTable table;
  private final PassRules rules;
  private final EventCursor events;

  PassCheck(ReplayTable table, PassRules rules, EventCursor events) {
    this.table = table;
    this.rules = rules;
    this.events = events;
  }

  /** Checks the first round; tells whether the passes were stopped before the tiles were seen. */
  boolean firstRound() {
    for (String step : FIRST) {
      pass(step);
    }
    return rules.stopBeforeSeeing() && asked() && stopped();
  }

  /** Checks the stop question where it comes after the first round. */
  boolean stoppedAfterSeeing() {
    return !rules.stopBeforeSeeing() && asked() && stopped();
  }

  void secondRound() {
    if (rules.second() != PassRules.Second.NONE) {
      SECOND.forEach(this::pass);
    }
  }

  private boolean asked() {
    return rules.second() == PassRules.Second.ANY_PLAYER_MAY_STOP
        || rules.second() == PassRules.Second.MAJORITY;
  }

  private boolean stopped() {
    GameEvent.Stop stop = events.next(GameEvent.Stop.class, "the stop question (rule 2.4)");
    int last = -1;
    for (int seat : stop.seats()) {
      require(seat > last && seat < 4, "the seats that stopped are named once each, ascending");
      last = seat;
    }
    int enough = rules.second() == PassRules.Second.MAJORITY ? 3 : 1;
    return stop.seats().size() >= enough;
  }

  private void pass(String step) {
    int turns = step.startsWith("right") ? 1 : step.startsWith("across") ? 2 : 3;
    List<GameEvent.Pass> passes = new ArrayList<>();
    int out = 0;
    for (int seat = 0; seat < 4; seat++) {
      GameEvent.Pass pass = events.next(GameEvent.Pass.class, "the pass " + step + " (rule 2.1)");
      require(
          pass.step().equals(step),
          "the pass " + step + " comes first, not " + Shown.word(pass.step()));
      require(pass.from() == seat && pass.to() == (seat + turns) % 4, "from and to (rule 2.1)");
      passes.add(pass);
      out += pass.own().size();
    }
    int first = events.last() - 3;
    int least = 3 - blindMost(step);
    for (GameEvent.Pass pass : passes) {
      events.lookAt(first + pass.from());
      noJokers(pass.from(), pass.own());
      table.give(pass.from(), pass.own(), "2.1");
      int tiles = pass.own().size() + pass.forwarded().size();
      boolean empty = pass.own().isEmpty() && pass.forwarded().isEmpty();
      boolean nothingToMove = out == 0 || (turns == 2 && bothEmpty(passes, pass));
      require(tiles == 3 || (empty && nothingToMove), "three tiles are passed (rule 2.1.1)");
      require(pass.own().size() >= least, "at least " + least + " own tiles here (rule 2.3.1)");
      setOut(passes, pass);
    }
    for (GameEvent.Pass pass : passes) {
      events.lookAt(first + pass.to());
      receive(passes, pass.to());
    }
    events.lookAt(first + 3);
  }

  private static boolean bothEmpty(List<GameEvent.Pass> passes, GameEvent.Pass pass) {
    return passes.get(pass.to()).own().isEmpty();
  }

  private int blindMost(String step) {
    boolean ends = step.equals("left-1") || step.equals("right-2");
    boolean allowed =
        rules.blind() == PassRules.Blind.ALL_PASSES
            || (rules.blind() != PassRules.Blind.NONE && ends);
    return allowed ? rules.blindMost() : 0;
  }

  /** Only where a rack has fewer than three naturals, as it can with many jokers, may one go. */
  private void noJokers(int seat, List<Integer> tiles) {
    Rack rack = table.racks.get(seat);
    require(
        !tiles.contains(Tile.JOKER) || rules.jokersMayPass() || rack.total() - rack.jokers() < 3,
        "a joker may not be passed (rule 2.1.2)");
  }

  /** A tile that goes on unseen was set out by one of those among whom the pass goes round. */
  private static void setOut(List<GameEvent.Pass> passes, GameEvent.Pass pass) {
    boolean across = pass.from() == passes.get(pass.to()).to();
    for (int tile : pass.forwarded()) {
      boolean set = false;
      for (GameEvent.Pass other : passes) {
        boolean together = !across || (other.from() - pass.from()) % 2 == 0;
        set |= together && other.own().contains(tile);
      }
      require(set, "nobody set out the " + Tile.symbol(tile) + " that goes on unseen (rule 2.3.2)");
    }
  }

  /** What comes in, less what goes on unseen, is kept (rule 2.3.2). */
  private void receive(List<GameEvent.Pass> passes, int seat) {
    GameEvent.Pass own = passes.get(seat);
    Rack incoming = new Rack();
    for (GameEvent.Pass pass : passes) {
      if (pass.to() == seat) {
        pass.own().forEach(incoming::add);
        pass.forwarded().forEach(incoming::add);
      }
    }
    for (int tile : own.forwarded()) {
      require(
          incoming.held(tile) > 0,
          String.format(
              Locale.ROOT,
              "seat %d passes on %s, which did not come in (rule 2.3.2)",
              seat,
              Tile.symbol(tile)));
      incoming.remove(tile);
    }
    for (int tile : incoming.tiles()) {
      table.racks.get(seat).add(tile);
    }
  }

  void courtesy() {
    if (!rules.courtesy()) {
      return;
    }
    for (int low = 0; low < 2; low++) {
      GameEvent.Courtesy pass =
          events.next(GameEvent.Courtesy.class, "the courtesy pass (rule 2.5)");
      require(
          pass.seats().equals(List.of(low, low + 2)), "opposite seats, 0 and 2 first (rule 2.5)");
      require(
          pass.asked().size() == 2 && pass.tiles().size() == 2,
          "two numbers, two lists (rule 2.5)");
      int number = Math.min(pass.asked().get(0), pass.asked().get(1));
      require(
          number >= 0 && Math.max(pass.asked().get(0), pass.asked().get(1)) <= 3,
          "a courtesy number is 0 to 3 (rule 2.5.1)");
      for (int side = 0; side < 2; side++) {
        List<Integer> given = pass.tiles().get(side);
        require(given.size() == number, "the lower number is exchanged (rule 2.5.1)");
        noJokers(pass.seats().get(side), given);
        table.give(pass.seats().get(side), given, "2.5");
      }
      for (int side = 0; side < 2; side++) {
        Rack other = table.racks.get(pass.seats().get(1 - side));
        pass.tiles().get(side).forEach(other::add);
      }
    }
  }
}
