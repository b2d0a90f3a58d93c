package org.tallywall.experiments.invent;

import java.util.function.Consumer;

/** Looks for a balanced card among the seeds from a given one on. */
public final class BalancedCard {
  /** Games that tell a card that is far out of balance. */
  private static final int FIRST_LOOK = 1_000;

  private static final double FIRST_SLACK = 1.5;
  private static final int GAMES = 8_000;

  /**
   * The bounds are kept with something to spare, so that other games find the card balanced too.
   */
  private static final double LAST_SLACK = 0.88;

  private static final int MOST_SEEDS = 1_000;

  private BalancedCard() {}

  /**
   * Draws cards until one is balanced.
   *
   * @param seed the first seed
   * @param lines number of lines, as {@link CardInventor} takes it
   * @param name what the card is called
   * @param told hears why a seed was passed over
   * @return the first balanced card, or null where none of a thousand seeds gives one
   */
  public static InventedCard find(long seed, int lines, String name, Consumer<String> told) {
    for (int tries = 0; tries < MOST_SEEDS && seed + tries >= 0; tries++) {
      long at = seed + tries;
      InventedCard card = new CardInventor(at, lines).draw(name);
      TrialGames trial = new TrialGames(card.card());
      trial.playTo(FIRST_LOOK, at);
      String complaint = trial.complaint(FIRST_SLACK);
      if (complaint.isEmpty()) {
        trial.playTo(GAMES, at);
        complaint = trial.complaint(LAST_SLACK);
      }
      if (complaint.isEmpty()) {
        return card;
      }
      told.accept("seed " + at + ": " + complaint);
    }
    return null;
  }
}
