package org.tallywall.core.record;

import java.util.List;
import java.util.Map;

/**
 * A game written down completely.
 *
 * @param header what was played, by whom
 * @param wall kinds in the order in which they are taken
 * @param dice the two dice
 * @param events what happened
 * @param end how it ended
 */
public record GameRecord(
    Header header, List<Integer> wall, List<Integer> dice, List<GameEvent> events, End end) {
  /** The format's name and version. */
  public static final String FORMAT = "tallywall.game/1";

  /**
   * A record.
   *
   * @param header what was played
   * @param wall kinds
   * @param dice the two dice
   * @param events what happened
   * @param end how it ended
   */
  public GameRecord {
    wall = List.copyOf(wall);
    dice = List.copyOf(dice);
    events = List.copyOf(events);
  }

  /**
   * What was played, by whom.
   *
   * @param study the study's name, or empty
   * @param seed the study's seed
   * @param game running number in the file, from 0
   * @param deal the deal, from 0
   * @param arm the way of playing that is studied, or empty
   * @param seat the studied seat, or -1
   * @param card the card's name and digest
   * @param rules every switch with its value
   * @param players who sits where, written as in the study
   */
  public record Header(
      String study,
      long seed,
      long game,
      long deal,
      String arm,
      int seat,
      CardName card,
      Map<String, Object> rules,
      List<Object> players) {}

  /**
   * Which card was played.
   *
   * @param card its name
   * @param digest its digest
   */
  public record CardName(String card, String digest) {}

  /**
   * How a game ended.
   *
   * @param how mahjong, wall-game or void
   * @param win the win, or null
   * @param points what each seat gains or loses
   * @param wall tiles left in the wall
   */
  public record End(String how, Win win, List<Integer> points, int wall) {}

  /**
   * A win.
   *
   * @param seat who won
   * @param by how the hand was completed
   * @param from who threw the winning tile, or -1
   * @param line the line's id
   * @param hand the concrete hand as words
   * @param value the line's value
   * @param jokerless whether it was paid as jokerless
   */
  public record Win(
      int seat,
      String by,
      int from,
      String line,
      List<String> hand,
      int value,
      boolean jokerless) {}
}
