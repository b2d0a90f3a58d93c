package org.tallywall.experiments.reading;

import java.util.List;

/**
 * What throwing one kind of tile would risk, with all racks as they are now.
 *
 * @param kind a kind on the rack, 0 to 35
 * @param held how many of it are on the rack
 * @param guesses in how many guesses its wins were looked for
 * @param wins in how many of them somebody may declare mahjong on it
 * @param winsOf the same by seat
 * @param paid points that the thrower pays over all these wins, the first in turn taken as the
 *     winner
 * @param least the smallest of these payments, 0 where there are none
 * @param most the largest
 * @param tried in how many guesses the supposed players were asked about it
 * @param claims in how many of them nobody may win on it and somebody claims it for an exposure
 * @param claimsOf in how many of them a seat wants it for an exposure
 * @param shelters how safe it is from each of the others
 */
public record TileReading(
    int kind,
    int held,
    int guesses,
    int wins,
    List<Integer> winsOf,
    long paid,
    int least,
    int most,
    int tried,
    int claims,
    List<Integer> claimsOf,
    Shelters shelters) {
  /**
   * Copies the lists.
   *
   * @param kind a kind
   * @param held how many are held
   * @param guesses how many guesses
   * @param wins guesses with a win
   * @param winsOf the same by seat
   * @param paid points paid
   * @param least the smallest payment
   * @param most the largest payment
   * @param tried guesses in which players were asked
   * @param claims guesses with an exposure
   * @param claimsOf the same by seat
   * @param shelters how safe it is
   */
  public TileReading {
    winsOf = List.copyOf(winsOf);
    claimsOf = List.copyOf(claimsOf);
  }

  /**
   * The chance that it gives the game away.
   *
   * @return 0 to 1
   */
  public double win() {
    return wins / (double) guesses;
  }

  /**
   * The chance that it is claimed for an exposure and does not give the game away.
   *
   * @return 0 to 1
   */
  public double claim() {
    return claims / (double) tried;
  }

  /**
   * What the thrower pays on the average where it gives the game away.
   *
   * @return points, 0 where it never does
   */
  public double pays() {
    return wins == 0 ? 0 : paid / (double) wins;
  }

  /**
   * What one throw costs on the average, the throws that cost nothing counted.
   *
   * @return points
   */
  public double perThrow() {
    return paid / (double) guesses;
  }
}
