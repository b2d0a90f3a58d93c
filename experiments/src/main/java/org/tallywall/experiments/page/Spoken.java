package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.Note;
import org.tallywall.experiments.story.ReasonWords;
import org.tallywall.strategies.reason.Reason;

/** What players said in a game played again: their aims, and their reasons beside the events. */
final class Spoken implements Commentary {
  private final AimNotes aims;
  private final List<GameEvent> events;
  private final List<Map<Integer, List<String>>> reasons = new ArrayList<>();

  /**
   * Sorts out what was said.
   *
   * @param game the game
   * @param aims what players aim at; a reason that names an aim is added to them
   * @param notes the choices with their reasons
   * @param words the words for reasons
   */
  Spoken(GameRecord game, AimNotes aims, List<Note> notes, ReasonWords words) {
    this.aims = aims;
    this.events = game.events();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      reasons.add(new HashMap<>());
    }
    for (Note note : notes) {
      int place = place(note);
      List<Reason> others = new ArrayList<>();
      for (Reason reason : note.reasons()) {
        if (reason instanceof Reason.Aim aim) {
          aims.heard(place, note.seat(), aim.line());
        } else {
          others.add(reason);
        }
      }
      if (!others.isEmpty()) {
        reasons
            .get(note.seat())
            .computeIfAbsent(place, event -> new ArrayList<>())
            .add(choice(note) + ": " + words.text(others));
      }
    }
  }

  /** What the reasons are for. */
  private static String choice(Note note) {
    if (note.move() instanceof Move.Discard discard) {
      return "throws " + Tile.symbol(discard.tile());
    }
    return note.choice().isEmpty() ? "why" : note.choice();
  }

  @Override
  public OptionalInt aim(int event, int seat) {
    return aims.aim(event, seat);
  }

  @Override
  public List<String> reasons(int event, int seat) {
    return reasons.get(seat).getOrDefault(event, List.of());
  }

  /**
   * The event to which a choice belongs: the discard that was let go, else the one that came of it
   * next. All four choose their passes before the first of the four events.
   */
  private int place(Note note) {
    int next = (int) note.events();
    if (note.move() instanceof Move.Nothing) {
      return next - 1;
    }
    for (int at = next; at < Math.min(next + Seats.COUNT, events.size()); at++) {
      if (isPartOf(events.get(at), note.seat())) {
        return at;
      }
    }
    return next;
  }

  private static boolean isPartOf(GameEvent event, int seat) {
    if (event instanceof GameEvent.Pass pass) {
      return pass.from() == seat;
    }
    return !(event instanceof GameEvent.Courtesy courtesy) || courtesy.seats().contains(seat);
  }
}
