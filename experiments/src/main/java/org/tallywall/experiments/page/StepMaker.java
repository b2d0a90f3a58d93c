package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tallywall.core.card.Card;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.LineNames;
import org.tallywall.experiments.story.PassNames;
import org.tallywall.experiments.story.PlayWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.StoryTable;
import org.tallywall.experiments.story.TypedTiles;

/**
 * Cuts a game into steps: the deal, each pass, then every draw, exchange, discard and claim. A step
 * says aloud what the whole table hears; what only one player knows stands beside its rack.
 */
final class StepMaker implements GameEvent.Taker {
  private final GameRecord game;
  private final Card card;
  private final SeatNames seats;
  private final AimWords aims;
  private final Commentary commentary;
  private final TypedTiles words = new TypedTiles();
  private final PlayWords play;
  private final StoryTable table;
  private final Discards discards = new Discards();
  private final List<Step> steps = new ArrayList<>();
  private final List<GameEvent.Pass> parts = new ArrayList<>();
  private final Set<Integer> dead = new TreeSet<>();
  private final List<String> after = new ArrayList<>(List.of("", "", "", ""));

  /** The place of the event in the record. */
  private int event = -1;

  /** The last event whose reasons were told. */
  private int told = -1;

  StepMaker(GameRecord game, Card card, SeatNames seats, AimWords aims, Commentary commentary) {
    this.game = game;
    this.card = card;
    this.seats = seats;
    this.play = new PlayWords(seats, words);
    this.aims = aims;
    this.commentary = commentary;
    this.table = new StoryTable(game);
  }

  List<Step> steps() {
    add("deal", "The deal", new Tableau(table));
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
    add("stop", stopped(stop.seats()), new Tableau(table));
  }

  @Override
  public void draw(GameEvent.Draw draw) {
    table.draw(draw);
    Tableau moment = new Tableau(table).onTurn(draw.seat());
    moment.arrived(draw.seat(), List.of(draw.tile()));
    add("draw", upper(draw.seat()) + " draws", moment.did(draw.seat(), play.draw(draw)));
  }

  @Override
  public void discard(GameEvent.Discard discard) {
    table.discard(discard);
    discards.thrown(discard.seat(), discard.tile());
    add(
        "discard",
        upper(discard.seat()) + " " + play.discard(discard),
        new Tableau(table).onTurn(discard.seat()));
  }

  @Override
  public void dead(GameEvent.Dead dead) {
    this.dead.add(dead.seat());
    add("dead", upper(play.dead(dead)), new Tableau(table));
  }

  @Override
  public void wallGame(GameEvent.WallGame wallGame) {
    add("wall", "The wall is used up: nobody wins", new Tableau(table));
  }

  @Override
  public void voidGame(GameEvent.VoidGame voidGame) {
    add("void", "Three hands are dead: the game is void", new Tableau(table));
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
            part.from(), "passes " + words.tiles(all) + " to " + seats.player(part.to()) + unseen);
      }
    }
    boolean moved = parts.stream().anyMatch(p -> !p.own().isEmpty() || !p.forwarded().isEmpty());
    String title = PassNames.of(parts.get(0).step());
    add("pass", title + (moved ? "" : ": " + PassNames.ALL_BLIND), moment);
    parts.clear();
  }

  private static int unseen(GameEvent.Pass part) {
    return part.forwarded().size();
  }

  private String stopped(List<Integer> stoppers) {
    List<String> names = stoppers.stream().map(seats::player).toList();
    return PassNames.SECOND
        + " "
        + (names.isEmpty() ? "Nobody stops it" : "Stopped by " + String.join(" and ", names));
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
        "Courtesy: %s offers %s, %s offers %s"
            .formatted(
                seats.of(low), courtesy.asked().get(0), seats.of(high), courtesy.asked().get(1));
    add("pass", title, moment);
  }

  private void give(Tableau moment, int from, int to, List<Integer> tiles) {
    if (!tiles.isEmpty()) {
      moment.arrived(to, tiles);
      moment.did(from, "gives " + words.tiles(tiles) + " to " + seats.player(to));
    }
  }

  @Override
  public void claim(GameEvent.Claim claim) {
    Exposure laid = table.claim(claim);
    discards.called(steps.size());
    String title = upper(claim.seat()) + " " + String.join(" and ", play.claim(claim, laid));
    add("claim", title, new Tableau(table).onTurn(claim.seat()));
  }

  @Override
  public void exchange(GameEvent.Exchange exchange) {
    String words = play.exchange(exchange, table.exchange(exchange));
    Tableau moment = new Tableau(table).onTurn(exchange.seat());
    moment.arrived(exchange.seat(), List.of(Tile.JOKER));
    add("exchange", upper(exchange.seat()) + " " + words, moment);
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
    add("mahjong", upper(mahjong.seat()) + " " + play.mahjong(mahjong), moment);
  }

  private void end() {
    GameRecord.Win win = game.end().win();
    Tableau moment = new Tableau(table);
    if (win != null) {
      moment.onTurn(win.seat()).shown(win.seat());
    }
    String line =
        win == null
            ? "nobody wins"
            : "%s wins with %s".formatted(seats.player(win.seat()), LineNames.of(card, win.line()));
    add("end", "The end: " + line, moment.points(game.end().points()));
  }

  /** What a player gave as reasons since the step before. */
  private List<String> why(int seat) {
    List<String> why = new ArrayList<>();
    for (int at = told + 1; at <= event; at++) {
      why.addAll(commentary.reasons(at, seat));
    }
    return why;
  }

  private void add(String kind, String title, Tableau moment) {
    List<String> changed = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      String aim = aims.of(table.rack(seat), table.exposures(seat), commentary.aim(event, seat));
      changed.add(aim.equals(after.set(seat, aim)) ? "" : aim);
      moment.reasons(seat, why(seat));
    }
    told = event;
    steps.add(new Step(kind, title, moment.dead(dead).values(discards, changed)));
  }

  private String upper(int seat) {
    return upper(seats.of(seat));
  }

  private static String upper(String name) {
    return Character.toUpperCase(name.charAt(0)) + name.substring(1);
  }
}
