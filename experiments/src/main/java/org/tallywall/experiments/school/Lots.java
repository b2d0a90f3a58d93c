package org.tallywall.experiments.school;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/**
 * Draws decisions. Of each kind, every decision of all games counted is as likely as any other, but
 * no game gives two, so that what is found out of one says nothing of the next. Kinds take turns:
 * whenever somebody stops, each had its share.
 */
final class Lots {
  private Lots() {}

  /**
   * A decision to be looked at.
   *
   * @param number its number, from 0
   * @param kind its kind
   * @param deal the deal of its game
   * @param place which of that kind it is in the game, from 0
   */
  record Lot(int number, Kind kind, int deal, int place) {}

  /**
   * Draws.
   *
   * @param counts what was counted
   * @param seed the seed
   * @param each decisions of each kind at most; fewer where fewer games have one
   * @return the decisions in the order in which they are looked at
   */
  static List<Lot> draw(Counts counts, long seed, int each) {
    List<List<Lot>> columns = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      columns.add(draw(kind, counts, seed, each));
    }
    List<Lot> all = new ArrayList<>();
    for (int row = 0; row < each; row++) {
      for (List<Lot> column : columns) {
        if (row < column.size()) {
          Lot one = column.get(row);
          all.add(new Lot(all.size(), one.kind(), one.deal(), one.place()));
        }
      }
    }
    return all;
  }

  private static List<Lot> draw(Kind kind, Counts counts, long seed, int each) {
    RandomStream lots =
        new RandomStream(new StreamKey(seed, kind.ordinal(), Purpose.RESAMPLING, 0, 0, 0));
    int all = counts.of(kind).sum().intValueExact();
    int wanted = Math.min(each, counts.gamesWith(kind));
    boolean[] drawn = new boolean[counts.games()];
    List<Lot> column = new ArrayList<>();
    while (column.size() < wanted) {
      int place = lots.below(all);
      int deal = 0;
      while (place >= counts.of(kind, deal)) {
        place -= counts.of(kind, deal);
        deal++;
      }
      if (!drawn[deal]) {
        drawn[deal] = true;
        column.add(new Lot(column.size(), kind, deal, place));
      }
    }
    return column;
  }
}
