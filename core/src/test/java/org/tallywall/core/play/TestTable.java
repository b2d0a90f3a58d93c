package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.tallywall.core.TestCards;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** A game of scripted players on the test card, with its events as short texts. */
final class TestTable {
  static final ConcreteHands CARD = new ConcreteHands(TestCards.testCard());

  private final Map<String, Object> rules = new LinkedHashMap<>();
  private final Script[] players = new Script[Seats.COUNT];
  private UnaryOperator<StackedWall> stacked = wall -> wall;
  final List<String> events = new ArrayList<>();
  Outcome outcome;
  OpenTable table;

  private TestTable() {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players[seat] = new Script();
    }
  }

  /** A table with all passes. */
  static TestTable withPasses() {
    return new TestTable();
  }

  /** A table at which play begins with the dealt racks. */
  static TestTable withoutPasses() {
    return new TestTable().rule("charleston.first", "NONE").rule("charleston.courtesy", "NONE");
  }

  TestTable rule(String key, Object value) {
    rules.put(key, value);
    return this;
  }

  TestTable wall(UnaryOperator<StackedWall> how) {
    stacked = how;
    return this;
  }

  Script seat(int seat) {
    return players[seat];
  }

  TestTable play() {
    TableRules tableRules = TableRules.of(rules);
    TableSetup setup = new TableSetup(CARD, tableRules);
    Deal deal = stacked.apply(new StackedWall(tableRules.tiles())).deal();
    outcome = new Game(setup, List.of(players), new Log()).play(deal);
    return this;
  }

  String from(int event) {
    return String.join("\n", events.subList(event, events.size()));
  }

  private final class Log implements GameListener {
    @Override
    public void began(OpenTable open) {
      table = open;
    }

    @Override
    public void passed(PassStep step, int from, int[] own, int[] forwarded) {
      events.add("pass " + step.text() + " " + from + " " + tiles(own) + "/" + tiles(forwarded));
    }

    @Override
    public void stopAsked(int stoppers) {
      events.add("stop " + stoppers);
    }

    @Override
    public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
      events.add(
          "courtesy "
              + low
              + " "
              + asked[0]
              + asked[1]
              + " "
              + tiles(lowGave)
              + "/"
              + tiles(highGave));
    }

    @Override
    public void drew(int seat, int tile) {
      events.add("draw " + seat + " " + Tile.symbol(tile));
    }

    @Override
    public void exchanged(int seat, int owner, int exposure, int tile) {
      events.add("exchange " + seat + " " + owner + " " + exposure + " " + Tile.symbol(tile));
    }

    @Override
    public void discarded(int seat, int tile) {
      events.add("discard " + seat + " " + Tile.symbol(tile));
    }

    @Override
    public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
      events.add("claim " + seat + " " + from + " " + laid + " also " + also + " " + alsoMahjong);
    }

    @Override
    public void died(int seat) {
      events.add("dead " + seat);
    }

    @Override
    public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
      events.add(
          "mahjong " + seat + " " + by.text() + " " + from + " also " + also + " " + alsoMahjong);
    }

    @Override
    public void ended(Outcome how) {
      events.add("end " + how.how().text() + " " + how.points());
    }

    private String tiles(int[] kinds) {
      StringBuilder text = new StringBuilder();
      for (int kind : kinds) {
        text.append(Tile.symbol(kind));
      }
      return text.toString();
    }
  }
}
