package org.tallywall.experiments.club;

import java.util.List;
import java.util.OptionalInt;

/**
 * What a club counted; whatever it did not count is left out. Compared by identity of its lists
 * alone.
 *
 * @param games games played, 1 or more
 * @param wallGames games that nobody won, 0 to {@code games}; empty where not counted
 * @param selfPicked wins that were no discard of another player; empty where not counted
 * @param sections wins by family, in the order of the card; empty where not counted
 */
public record ClubTally(
    int games, OptionalInt wallGames, OptionalInt selfPicked, List<Integer> sections) {
  /** The most games that a tally may have. */
  public static final int MOST_GAMES = 10_000;

  /**
   * A tally.
   *
   * @param games games played
   * @param wallGames games that nobody won
   * @param selfPicked wins that were no discard of another player
   * @param sections wins by family
   * @throws IllegalArgumentException with what does not add up, in a sentence
   */
  public ClubTally {
    sections = List.copyOf(sections);
    require(games >= 1 && games <= MOST_GAMES, "\"games\" is a number from 1 to 10,000");
    require(
        wallGames.isPresent() || selfPicked.isPresent() || !sections.isEmpty(),
        "nothing is counted besides the games; fill in at least one more line");
    require(
        wallGames.orElse(0) <= games,
        "there are more wall games (%s) than games (%s)".formatted(wallGames.orElse(0), games));
    require(
        selfPicked.isEmpty() || wallGames.isPresent() || !sections.isEmpty(),
        "self-picked wins need the wall games or the sections beside them, so that it is known how"
            + " many games were won");
    int won = sections.stream().mapToInt(Integer::intValue).sum();
    int most = games - wallGames.orElse(0);
    require(
        won <= most, "the sections have %s wins, but only %s games were won".formatted(won, most));
    require(
        sections.isEmpty() || won > 0, "the sections have no win; leave them empty if not counted");
    int wins = wallGames.isPresent() ? most : won;
    require(
        selfPicked.orElse(0) <= wins,
        "there are more self-picked wins (%s) than wins (%s)"
            .formatted(selfPicked.orElse(0), wins));
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }

  /**
   * The wins that self-picked ones are counted among.
   *
   * @return 0 or more
   */
  public int wins() {
    return wallGames.isPresent() ? games - wallGames.getAsInt() : noted();
  }

  /**
   * The wins whose family is known.
   *
   * @return 0 or more; fewer than {@link #wins()} where some were not written down
   */
  public int noted() {
    return sections.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * What was counted, each as games or wins that fall into one of several boxes.
   *
   * @return wall games and others, self-picked wins and others, wins by family; what was not
   *     counted has no boxes
   */
  long[][] boxes() {
    return new long[][] {
      wallGames.isPresent() ? new long[] {wallGames.getAsInt(), wins()} : new long[0],
      selfPicked.isPresent()
          ? new long[] {selfPicked.getAsInt(), wins() - selfPicked.getAsInt()}
          : new long[0],
      sections.stream().mapToLong(Integer::longValue).toArray()
    };
  }
}
