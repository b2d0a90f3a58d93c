package org.tallywall.experiments.reading;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * How safe a tile is from each of the others.
 *
 * @param seats whose shelter each is, in turn order
 * @param from the shelters in the same order
 */
public record Shelters(List<Integer> seats, List<Shelter> from) {
  /**
   * Copies the lists.
   *
   * @param seats whose
   * @param from the shelters
   */
  public Shelters {
    seats = List.copyOf(seats);
    from = List.copyOf(from);
  }

  /**
   * Whether it is a fact that nobody can win on the tile.
   *
   * @return true if so
   */
  public boolean nobodyWins() {
    return from.stream().allMatch(Shelter::cannotWin);
  }

  /**
   * Whether it is a fact that nobody can take the tile.
   *
   * @return true if so
   */
  public boolean nobodyTakes() {
    return from.stream().allMatch(Shelter::cannotTake);
  }

  /**
   * Whether each of the others threw the kind or let it go by with the rack that she has now, or
   * cannot win on it: evidence, not proof.
   *
   * @return true if one at least threw it or let it go by
   */
  public boolean wentRound() {
    return from.stream().anyMatch(Shelter::wentBy)
        && from.stream().allMatch(one -> one.wentBy() || one.cannotWin());
  }

  /**
   * The seats of which something holds.
   *
   * @param what what is asked
   * @return seats in turn order
   */
  public List<Integer> where(Predicate<Shelter> what) {
    return IntStream.range(0, seats.size())
        .filter(at -> what.test(from.get(at)))
        .mapToObj(seats::get)
        .toList();
  }
}
