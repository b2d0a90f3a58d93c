package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Exposure;
import org.tallywall.experiments.story.PassNames;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.StoryTable;
import org.tallywall.experiments.story.TypedTiles;

/**
 * Cuts a game into steps: the deal, each pass, then every draw, exchange, discard and claim. A step
 * says aloud what the whole table hears; what only one player knows stands beside its rack.
 */
final class StepMaker implements GameEvent.Taker {
  private final GameRecord game;
  private final SeatNames seats;
  private final AimWords aims;
  private final Commentary commentary;
  private final TypedTiles words = new TypedTiles();
  private final StoryTable table;
  private final Discards discards = new Discards();
  private final List<Step> steps = new ArrayList<>();
  private final List<GameEvent.Pass> parts = new ArrayList<>();

  /** The place of the event in the record. */
  private int event = -1;

  /** The last event whose reasons were told. */
  private int told = -1;

  StepMaker(GameRecord game, SeatNames seats, AimWords aims, Commentary commentary) {
    this.game = game;
    this.seats = seats;
    this.aims = aims;
    this.commentary = commentary;
    this.table = new StoryTable(game);
  }

  List<Step> steps() {
    add("The deal", new Tableau(table));
    for (GameEvent one : game.events()) {
      event++;
      one.give(this);
    }
    end();
    return steps;
  }

  List<List<Object>> discards() {
    return discards.all();
  }

  @Override
  public void pass(GameEvent.Pass pass) {
    parts.add(pass);
    if (parts.size() == Seats.COUNT) {
      pass();
    }
  }

  @Override
  public void stop(GameEvent.Stop stop) {
    add(stopped(stop.seats()), new Tableau(table));
  }

  @Override
  public void draw(GameEvent.Draw draw) {
    table.draw(draw);
    Tableau moment = new Tableau(table).onTurn(draw.seat());
    moment.arrived(draw.seat(), List.of(draw.tile()));
    add(
        upper(seats.of(draw.seat())) + " draws",
        moment.did(draw.seat(), "draws " + words.tile(draw.tile())));
  }

  @Override
  public void discard(GameEvent.Discard discard) {
    table.discard(discard);
    discards.thrown(discard.seat(), discard.tile());
    add(
        upper(seats.of(discard.seat())) + " throws " + words.tile(discard.tile()),
        new Tableau(table).onTurn(discard.seat()));
  }

  @Override
  public void dead(GameEvent.Dead dead) {
    add(
        upper(seats.of(dead.seat())) + "'s hand is dead: nobody can make it any more",
        new Tableau(table));
  }

  @Override
  public void wallGame(GameEvent.WallGame wallGame) {
    add("The wall is used up: nobody wins", new Tableau(table));
  }

  @Override
  public void voidGame(GameEvent.VoidGame voidGame) {
    add("Three hands are dead: the game is void", new Tableau(table));
  }

  private void pass() {
    Tableau moment = new Tableau(table);
    table.pass(parts);
    for (GameEvent.Pass part : parts) {
      List<Integer> all = new ArrayList<>(part.own());
      all.addAll(part.forwarded());
      if (!all.isEmpty()) {
        moment.arrived(part.to(), all);
        String unseen = part.forwarded().isEmpty() ? "" : ", %s unseen".formatted(unseen(part));
        moment.did(
            part.from(), "passes " + words.tiles(all) + " to " + seats.of(part.to()) + unseen);
      }
    }
    boolean moved = parts.stream().anyMatch(p -> !p.own().isEmpty() || !p.forwarded().isEmpty());
    String title = PassNames.of(parts.get(0).step());
    add(title + (moved ? "" : ": all want to pass on what they get, so no tile moves"), moment);
    parts.clear();
  }

  private static int unseen(GameEvent.Pass part) {
    return part.forwarded().size();
  }

  private String stopped(List<Integer> stoppers) {
    if (stoppers.isEmpty()) {
      return "A second round? Nobody stops";
    }
    List<String> names = stoppers.stream().map(seats::of).toList();
    return "A second round? " + upper(String.join(" and ", names)) + ": stop";
  }

  @Override
  public void courtesy(GameEvent.Courtesy courtesy) {
    int low = courtesy.seats().get(0);
    int high = courtesy.seats().get(1);
    table.courtesy(courtesy);
    Tableau moment = new Tableau(table);
    give(moment, low, high, courtesy.tiles().get(0));
    give(moment, high, low, courtesy.tiles().get(1));
    String title =
        "Courtesy: %s offers %s, %s %s"
            .formatted(
                seats.of(low), courtesy.asked().get(0), seats.of(high), courtesy.asked().get(1));
    add(title, moment);
  }

  private void give(Tableau moment, int from, int to, List<Integer> tiles) {
    if (!tiles.isEmpty()) {
      moment.arrived(to, tiles);
      moment.did(from, "gives " + words.tiles(tiles) + " to " + seats.of(to));
    }
  }

  @Override
  public void claim(GameEvent.Claim claim) {
    Exposure laid = table.claim(claim);
    discards.called(steps.size());
    String title =
        "%s calls %s and lays open %s%s"
            .formatted(
                upper(seats.of(claim.seat())),
                words.tile(claim.tile()),
                words.exposure(laid),
                also(claim.losers()));
    add(title, new Tableau(table).onTurn(claim.seat()));
  }

  private String also(GameEvent.Losers losers) {
    List<String> names = new ArrayList<>();
    losers.exposures().forEach(seat -> names.add(seats.of(seat)));
    losers.mahjongs().forEach(seat -> names.add(seats.of(seat) + " for mahjong"));
    return names.isEmpty() ? "" : " (wanted too by " + String.join(", ", names) + ")";
  }

  @Override
  public void exchange(GameEvent.Exchange exchange) {
    Exposure before = table.exchange(exchange);
    boolean own = exchange.owner() == exchange.seat();
    String title =
        "%s gives %s for the joker in %s %s"
            .formatted(
                upper(seats.of(exchange.seat())),
                words.tile(exchange.tile()),
                own ? "the own" : seats.of(exchange.owner()) + "'s",
                words.exposure(before));
    add(title, new Tableau(table).onTurn(exchange.seat()));
  }

  @Override
  public void mahjong(GameEvent.Mahjong mahjong) {
    boolean claimed = mahjong.from() >= 0;
    Tableau moment = new Tableau(table).onTurn(mahjong.seat()).shown(mahjong.seat());
    if (claimed) {
      int tile = discards.last();
      discards.called(steps.size());
      table.rack(mahjong.seat()).add(tile);
      moment.arrived(mahjong.seat(), List.of(tile));
    }
    String on = claimed ? " on " + seats.of(mahjong.from()) + "'s discard" : "";
    add(upper(seats.of(mahjong.seat())) + " says mahjong" + on + also(mahjong.losers()), moment);
  }

  private void end() {
    GameRecord.Win win = game.end().win();
    Tableau moment = new Tableau(table);
    if (win != null) {
      moment.onTurn(win.seat()).shown(win.seat());
    }
    List<String> points = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      int gained = game.end().points().get(seat);
      points.add(
          seats.of(seat)
              + " "
              + (gained > 0 ? "+" : gained < 0 ? "\u2212" : "")
              + Math.abs(gained));
    }
    String line =
        win == null ? "nobody wins" : "%s wins with %s".formatted(seats.of(win.seat()), win.line());
    add("The end: " + line + "; points: " + String.join(", ", points), moment);
  }

  /** What a player gave as reasons since the step before. */
  private List<String> why(int seat) {
    List<String> why = new ArrayList<>();
    for (int at = told + 1; at <= event; at++) {
      why.addAll(commentary.reasons(at, seat));
    }
    return why;
  }

  private void add(String title, Tableau moment) {
    List<String> after = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      after.add(aims.of(table.rack(seat), table.exposures(seat), commentary.aim(event, seat)));
      moment.reasons(seat, why(seat));
    }
    told = event;
    steps.add(new Step(title, moment.values(discards, after)));
  }

  private static String upper(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
