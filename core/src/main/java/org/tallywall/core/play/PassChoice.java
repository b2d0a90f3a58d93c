package org.tallywall.core.play;

import java.util.Arrays;

/**
 * What a player sets out for a pass: three tiles, or fewer and the rest blind (rule 2.3.2).
 *
 * @param own kinds of the tiles from the rack, in ascending order
 * @param blind how many of the incoming tiles go on unseen, {@code 3 - own.length}
 */
public record PassChoice(int[] own, int blind) {
  /**
   * A pass.
   *
   * @param own kinds of the tiles from the rack, 0 to 3, in any order
   * @param blind how many go on unseen
   */
  public PassChoice {
    own = own.clone();
    Arrays.sort(own);
  }

  /**
   * A pass of some tiles; what is missing to three goes on blind.
   *
   * @param own kinds of the tiles from the rack, at most three
   * @return the choice
   */
  public static PassChoice of(int... own) {
    return new PassChoice(own, 3 - own.length);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PassChoice pass && blind == pass.blind && Arrays.equals(own, pass.own);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(own) + blind;
  }

  @Override
  public String toString() {
    return "pass " + Arrays.toString(own) + " blind " + blind;
  }
}
