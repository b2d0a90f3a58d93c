package org.tallywall.experiments.story;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Predicate;
import org.tallywall.core.sheet.Move;

/** Tells choices with their reasons, each once, under the event to which it led. */
final class NoteLines {
  private static final String INDENT = "          ";

  private final List<Note> left;
  private final SeatNames seats;
  private final ReasonWords words;
  private final List<String> lines;

  NoteLines(List<Note> notes, SeatNames seats, ReasonWords words, List<String> lines) {
    this.left = new ArrayList<>(notes);
    this.seats = seats;
    this.words = words;
    this.lines = lines;
  }

  /** Tells what was chosen before a number of events had passed. */
  void before(long events) {
    tell(note -> note.events() < events);
  }

  /** The same of some seats only. */
  void before(long events, List<Integer> of) {
    tell(note -> note.events() < events && of.contains(note.seat()));
  }

  /** Tells what was chosen before an event, and who let the discard before it go. */
  void untilOffer(long events) {
    tell(
        note ->
            note.events() < events
                || (note.events() == events && note.move() instanceof Move.Nothing));
  }

  /** Tells the rest. */
  void rest() {
    tell(note -> true);
  }

  private void tell(Predicate<Note> now) {
    for (Iterator<Note> at = left.iterator(); at.hasNext(); ) {
      Note note = at.next();
      if (now.test(note)) {
        at.remove();
        if (!note.reasons().isEmpty()) {
          String who = (seats.of(note.seat()) + " " + note.choice()).strip();
          lines.add(INDENT + Sentences.upper(who) + ": " + words.text(note.reasons()));
        }
      }
    }
  }
}
