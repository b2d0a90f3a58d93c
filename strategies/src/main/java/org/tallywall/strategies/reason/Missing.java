package org.tallywall.strategies.reason;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Lack;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/**
 * The tiles that bring a rack closer to one hand. Its jokers stand for none of them in particular:
 * where they do not fill every open place, each tile that belongs on one is listed, since a joker
 * can move over to another. Where they do, no open place is left to be filled.
 *
 * @param natural kinds for singles and pairs, and for all groups of a line without jokers, in order
 * @param open kinds for which a joker may stand, in order; a joker where no natural is left for it
 * @param filled how many of the open ones the rack's jokers stand for, fewer than there are, or 0
 */
public record Missing(List<Integer> natural, List<Integer> open, int filled) {
  /**
   * Copies the lists.
   *
   * @param natural kinds that must be natural
   * @param open kinds for which a joker may stand
   * @param filled how many of these jokers stand for
   */
  public Missing {
    natural = List.copyOf(natural);
    open = List.copyOf(open);
  }

  /**
   * What a rack is missing of a hand.
   *
   * @param meter a meter that holds the rack
   * @param reach the hands that stay possible
   * @param hand the hand, its place in the reach
   * @param jokers how many jokers the rack holds, 0 or more
   * @return what is missing
   */
  public static Missing of(HandMeter meter, Reach reach, int hand, int jokers) {
    Lack lack = new Lack();
    meter.lack(reach, hand, lack);
    List<Integer> natural = new ArrayList<>();
    List<Integer> open = new ArrayList<>();
    if (jokers < lack.opens()) {
      fill(open, lack);
    }
    for (int at = 0; at < lack.kinds(); at++) {
      natural.addAll(Collections.nCopies(lack.natural(at), lack.kind(at)));
    }
    return new Missing(natural, open, open.isEmpty() ? 0 : jokers);
  }

  private static void fill(List<Integer> open, Lack lack) {
    for (int at = 0; at < lack.kinds(); at++) {
      open.addAll(Collections.nCopies(lack.open(at), lack.kind(at)));
    }
    open.addAll(Collections.nCopies(lack.opens() - open.size(), Tile.JOKER));
  }

  /**
   * All of them.
   *
   * @return the kinds in order; as many as the hand is away, and those that jokers stand for
   */
  public List<Integer> tiles() {
    Rack all = new Rack();
    natural.forEach(all::add);
    open.forEach(all::add);
    return Arrays.stream(all.tiles()).boxed().toList();
  }
}
