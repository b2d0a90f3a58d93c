package org.tallywall.core.record;

import java.util.List;

/** Goes through the events of a record, one by one. */
final class EventCursor {
  private final List<GameEvent> events;
  private int at;
  private int blamed = -1;

  EventCursor(List<GameEvent> events) {
    this.events = events;
  }

  /** The next event without going on, or null after the last. */
  GameEvent peek() {
    return at < events.size() ? events.get(at) : null;
  }

  /** Goes on to the next event, which must be of a kind. */
  <E extends GameEvent> E next(Class<E> kind, String expected) {
    GameEvent event = peek();
    at++;
    blamed = -1;
    if (!kind.isInstance(event)) {
      throw new BreachException(
          "here comes " + expected + ", not " + (event == null ? "the end" : name(event)));
    }
    return kind.cast(event);
  }

  /** Nothing may follow the event that was read last. */
  void finish() {
    if (peek() != null) {
      at++;
      throw new BreachException("nothing happens after the end");
    }
  }

  /** Index of the event that was read last, or of the place where one should stand. */
  int last() {
    return blamed >= 0 ? blamed : at - 1;
  }

  /** Looks back at one of the events read: a breach found now is one of it. */
  void lookAt(int event) {
    blamed = event;
  }

  private static String name(GameEvent event) {
    return "the event " + event.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
  }
}
