package org.tallywall.core.record;

import org.tallywall.core.text.Shown;

/**
 * Where a record breaks the rules.
 *
 * @param event index of the event, from 0; -1 where the wall, the dice or the header is meant, the
 *     last event where the end is, the number of events where one more should follow
 * @param message what is wrong, with the rule's number
 */
public record Breach(int event, String message) {
  /**
   * A breach; whatever stood in the record is made visible.
   *
   * @param event index of the event
   * @param message what is wrong
   */
  public Breach {
    message = Shown.text(message);
  }
}
