package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.card.Card;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;

/** Tells the course of a recorded game, fit to be read aloud. */
public final class GameStory {
  private final GameRecord game;
  private final Card card;
  private final SeatNames seats;
  private final TileWords words;
  private final StoryTable table;
  private final List<String> lines = new ArrayList<>();
  private final NoteLines notes;

  private GameStory(
      GameRecord game, Card card, SeatNames seats, TileWords words, List<Note> chosen) {
    this.game = game;
    this.card = card;
    this.seats = seats;
    this.words = words;
    this.table = new StoryTable(game);
    this.notes = new NoteLines(chosen, seats, new ReasonWords(card, seats, words), lines);
  }

  /**
   * The course of a game.
   *
   * @param game the record of a game that was played by the rules
   * @param card the card on which it was played
   * @param seats what the seats are called
   * @param words how tiles are named
   * @return lines of text
   */
  public static List<String> of(GameRecord game, Card card, SeatNames seats, TileWords words) {
    return of(game, card, seats, words, List.of());
  }

  /**
   * The course of a game with the reasons of its choices.
   *
   * @param game the record of a game that was played by the rules
   * @param card the card on which it was played
   * @param seats what the seats are called
   * @param words how tiles are named
   * @param notes the choices in the order made
   * @return lines of text
   */
  public static List<String> of(
      GameRecord game, Card card, SeatNames seats, TileWords words, List<Note> notes) {
    GameStory course = new GameStory(game, card, seats, words, notes);
    course.tell();
    return course.lines;
  }

  private void tell() {
    heading("The deal");
    racks();
    PassStory passes = new PassStory(seats, words, table, lines);
    List<GameEvent> events = game.events();
    int played = 0;
    while (played < events.size() && passes(passes, events.get(played), played)) {
      played++;
    }
    if (played > 0 && played < events.size()) {
      heading("After the Charleston");
      racks();
    }
    heading("Play");
    PlayStory play = new PlayStory(seats, words, table, lines);
    for (int at = played; at < events.size(); at++) {
      if (play.begins(events.get(at))) {
        play.finish();
        notes.untilOffer(at);
      }
      events.get(at).give(play);
    }
    play.finish();
    notes.rest();
    lines.addAll(new EndStory(game, card, seats, words, table).lines());
  }

  private boolean passes(PassStory story, GameEvent event, int at) {
    int before = lines.size();
    boolean taken = event.match(story);
    if (event instanceof GameEvent.Courtesy courtesy) {
      notes.before(at + 1L, courtesy.seats());
    } else if (taken && lines.size() > before) {
      notes.before(at + 1L);
    }
    return taken;
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void racks() {
    for (int seat = 0; seat < seats.names().size(); seat++) {
      lines.add(
          "  " + Sentences.sentence(seats.of(seat) + " holds " + words.rack(table.rack(seat))));
    }
  }
}
