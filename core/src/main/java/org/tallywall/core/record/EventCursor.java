package org.tallywall.core.record;

import java.util.List;

/** Goes through the events of a record, one by one. */
final class EventCursor {
  private final List<GameEvent> events;
  private int at;

  EventCursor(List<GameEvent> events) {
    this.events = events;
  }

  /** The next event without going on, or null at the end. */
  GameEvent peek() {
    return at < events.size() ? events.get(at) : null;
  }

  /** Goes on to the next event, which must be of a kind. */
  <E extends GameEvent> E next(Class<E> kind, String expected) {
    GameEvent event = peek();
    if (!kind.isInstance(event)) {
      throw new BreachException(
          "here comes " + expected + ", not " + (event == null ? "the end" : name(event)));
    }
    at++;
    return kind.cast(event);
  }

  /** Index of the event that was read last. */
  int last() {
    return at - 1;
  }

  private static String name(GameEvent event) {
    return "the event " + event.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
  }
}
