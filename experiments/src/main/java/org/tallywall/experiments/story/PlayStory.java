package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.tile.Exposure;

/** Tells the play: one sentence a turn, with the tiles left in the wall in front of it. */
final class PlayStory implements GameEvent.Taker {
  private final SeatNames seats;
  private final PlayWords words;
  private final StoryTable table;
  private final List<String> lines;
  private final List<String> turn = new ArrayList<>();
  private int onTurn = -1;

  /** What was drawn in this turn, or -1. */
  private int drawn = -1;

  PlayStory(SeatNames seats, TileWords words, StoryTable table, List<String> lines) {
    this.seats = seats;
    this.words = new PlayWords(seats, words);
    this.table = table;
    this.lines = lines;
  }

  @Override
  public void draw(GameEvent.Draw draw) {
    begin(draw.seat());
    table.draw(draw);
    turn.add(words.draw(draw));
    drawn = draw.tile();
  }

  @Override
  public void discard(GameEvent.Discard discard) {
    continueWith(discard.seat());
    table.discard(discard);
    if (turn.size() == 1 && drawn == discard.tile()) {
      turn.set(0, words.drawnAndThrown(discard));
    } else {
      turn.add(words.discard(discard));
    }
  }

  @Override
  public void dead(GameEvent.Dead dead) {
    finish();
    say(words.dead(dead));
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
    turn.addAll(words.claim(claim, laid));
  }

  @Override
  public void exchange(GameEvent.Exchange exchange) {
    continueWith(exchange.seat());
    turn.add(words.exchange(exchange, table.exchange(exchange)));
  }

  @Override
  public void mahjong(GameEvent.Mahjong mahjong) {
    continueWith(mahjong.seat());
    turn.add(words.mahjong(mahjong));
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
      say(seats.of(onTurn) + " " + Sentences.list(turn));
      turn.clear();
    }
    drawn = -1;
    onTurn = -1;
  }

  private void say(String sentence) {
    String left = String.valueOf(table.left());
    lines.add(" ".repeat(4 - left.length()) + left + "  " + Sentences.sentence(sentence));
  }
}
