package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;

/** Tells the play: one sentence a turn, with the tiles left in the wall in front of it. */
final class PlayStory implements GameEvent.Taker {
  private final SeatNames seats;
  private final TileWords words;
  private final StoryTable table;
  private final List<String> lines;
  private final List<String> turn = new ArrayList<>();
  private int onTurn = -1;

  PlayStory(SeatNames seats, TileWords words, StoryTable table, List<String> lines) {
    this.seats = seats;
    this.words = words;
    this.table = table;
    this.lines = lines;
  }

  @Override
  public void draw(GameEvent.Draw draw) {
    begin(draw.seat());
    table.draw(draw);
    turn.add("draws " + words.tile(draw.tile()));
  }

  @Override
  public void discard(GameEvent.Discard discard) {
    continueWith(discard.seat());
    table.discard(discard);
    turn.add("throws " + words.tile(discard.tile()));
  }

  @Override
  public void dead(GameEvent.Dead dead) {
    finish();
    say(seats.of(dead.seat()) + "'s hand is called dead: nobody can make it any more");
  }

  @Override
  public void wallGame(GameEvent.WallGame wallGame) {
    finish();
  }

  @Override
  public void voidGame(GameEvent.VoidGame voidGame) {
    finish();
  }

  @Override
  public void pass(GameEvent.Pass pass) {
    finish();
  }

  @Override
  public void stop(GameEvent.Stop stop) {
    finish();
  }

  @Override
  public void courtesy(GameEvent.Courtesy courtesy) {
    finish();
  }

  /** Whether an event begins a sentence of its own. */
  boolean begins(GameEvent event) {
    return event.match(new TurnBegins(onTurn));
  }

  @Override
  public void claim(GameEvent.Claim claim) {
    begin(claim.seat());
    Exposure laid = table.claim(claim);
    turn.add(
        "calls "
            + (words.tile(claim.tile()) + " and lays open " + words.exposure(laid))
            + alsoWanted(claim.losers()));
  }

  private String alsoWanted(GameEvent.Losers losers) {
    List<String> also = new ArrayList<>();
    wanted(losers.exposures(), "an exposure", also);
    wanted(losers.mahjongs(), "mahjong", also);
    return also.isEmpty() ? "" : " (" + String.join("; ", also) + ")";
  }

  private void wanted(List<Integer> losers, String what, List<String> also) {
    if (!losers.isEmpty()) {
      String names = Sentences.list(losers.stream().map(seats::of).toList());
      also.add(names + " wanted it too, for " + what);
    }
  }

  @Override
  public void exchange(GameEvent.Exchange exchange) {
    continueWith(exchange.seat());
    Exposure before = table.exchange(exchange);
    String whose =
        exchange.owner() == exchange.seat() ? "the own" : seats.of(exchange.owner()) + "'s";
    turn.add(
        "gives %s for the joker in %s %s"
            .formatted(words.tile(exchange.tile()), whose, words.exposure(before)));
  }

  @Override
  public void mahjong(GameEvent.Mahjong mahjong) {
    continueWith(mahjong.seat());
    boolean claimed = mahjong.by().equals("discard") && turn.isEmpty();
    turn.add(
        claimed
            ? "says mahjong on "
                + seats.of(mahjong.from())
                + "'s discard"
                + alsoWanted(mahjong.losers())
            : "says mahjong");
    finish();
  }

  private void continueWith(int seat) {
    if (seat != onTurn) {
      begin(seat);
    }
  }

  private void begin(int seat) {
    finish();
    onTurn = seat;
  }

  /** Ends the sentence of the turn. */
  void finish() {
    if (!turn.isEmpty()) {
      say(seats.of(onTurn) + " " + String.join(", ", turn));
      turn.clear();
    }
    onTurn = -1;
  }

  private void say(String sentence) {
    String left = String.valueOf(table.left());
    lines.add(" ".repeat(4 - left.length()) + left + "  " + Sentences.sentence(sentence));
  }
}
