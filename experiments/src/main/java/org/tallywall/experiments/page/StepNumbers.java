package org.tallywall.experiments.page;

import java.util.List;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;

/**
 * Which step of a game's page shows the table after so many events: the deal is step 1, four passes
 * are one step, and everything else is one each.
 */
public final class StepNumbers {
  private final List<GameEvent> events;

  /**
   * The steps of a game.
   *
   * @param game its record
   */
  public StepNumbers(GameRecord game) {
    events = game.events();
  }

  /**
   * The step that shows the table after some events.
   *
   * @param number how many events, from 0 to all
   * @return the number in the address of the page, from 1
   */
  public int after(int number) {
    int passes = 0;
    for (GameEvent event : events.subList(0, number)) {
      passes += event instanceof GameEvent.Pass ? 1 : 0;
    }
    return 1 + number - passes + (passes + Seats.COUNT - 1) / Seats.COUNT;
  }

  /**
   * The last step.
   *
   * @return the number of the step that tells the end
   */
  public int last() {
    return after(events.size()) + 1;
  }
}
