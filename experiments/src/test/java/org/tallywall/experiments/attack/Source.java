package org.tallywall.experiments.attack;

import java.util.function.Function;

/**
 * Makes attacks of one kind.
 *
 * @param name what it is called in counts
 * @param share how many of {@link Sources#SHARES} attacks are its
 * @param maker makes one
 */
record Source(String name, int share, Function<Chance, Attack> maker) {

  Attack next(Chance chance) {
    return maker.apply(chance);
  }
}
