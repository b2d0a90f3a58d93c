package org.tallywall.core.rules;

import java.util.Arrays;
import java.util.List;

/** What a switch is about, for lists that people read; in the order in which a game meets them. */
public enum RuleGroup {
  /** How many tiles of which kind, how many players, who is East. */
  TILES("Tiles and seats", "tiles", "players", "deal"),
  /** The last tiles of the wall. */
  WALL("The wall", "wall"),
  /** The Charleston and the courtesy pass. */
  PASSES("Passes", "charleston"),
  /** Claims, and what they lay open. */
  CLAIMS("Claims and exposures", "claims", "exposure"),
  /** Exchanging and claiming jokers. */
  JOKERS("Jokers", "joker"),
  /** Declaring mahjong. */
  WINNING("Winning", "east", "win"),
  /** Dead hands. */
  DEAD("Dead hands", "dead"),
  /** Who pays how much. */
  PAY("Pay", "score");

  private final String title;
  private final List<String> prefixes;

  RuleGroup(String title, String... prefixes) {
    this.title = title;
    this.prefixes = Arrays.asList(prefixes);
  }

  /**
   * The heading of the group.
   *
   * @return as in "Claims and exposures"
   */
  public String title() {
    return title;
  }

  /**
   * The group of a switch.
   *
   * @param key the key of a known switch, as in {@code wall.cold}
   * @return where it belongs
   * @throws IllegalArgumentException if no group takes it
   */
  static RuleGroup of(String key) {
    int point = key.indexOf('.');
    String prefix = point < 0 ? key : key.substring(0, point);
    return Arrays.stream(values())
        .filter(group -> group.prefixes.contains(prefix))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no group for the switch " + key));
  }
}
