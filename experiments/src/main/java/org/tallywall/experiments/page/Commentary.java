package org.tallywall.experiments.page;

import java.util.List;
import java.util.OptionalInt;

/**
 * What players say about their play, beside the events of a record. An event is named by its place
 * in the record, from 0; -1 is the moment right after the deal.
 */
public interface Commentary {
  /** Nobody says anything. */
  Commentary NONE = new Commentary() {};

  /**
   * What a player aims at once an event has happened.
   *
   * @param event the event's place, or -1
   * @param seat the player's seat
   * @return a line's place on the card; none where the player aims at none or does not say
   */
  default OptionalInt aim(int event, int seat) {
    return OptionalInt.empty();
  }

  /**
   * Why a player chose what it did in an event.
   *
   * @param event the event's place
   * @param seat the player's seat
   * @return sentences; empty where it gives no reasons
   */
  default List<String> reasons(int event, int seat) {
    return List.of();
  }
}
