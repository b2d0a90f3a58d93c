package org.tallywall.experiments.review;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.Move;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Weighed;

/**
 * What a sound person might do in the passes. Of the hundreds of ways to pick three tiles those are
 * listed that are made of the tiles that judgment misses least; where tiles may go on unseen, also
 * fewer of these with the rest unseen.
 */
final class PassChoices {
  private static final int PASSED = 3;

  private PassChoices() {}

  static List<List<Move>> list(SeatView view, Moment moment, Player judge) {
    List<List<Move>> all = new ArrayList<>();
    if (moment instanceof Moment.Stop) {
      all.add(List.of(new Move.Stop(true)));
      all.add(List.of(new Move.Stop(false)));
    } else if (moment instanceof Moment.CourtesyAsk) {
      for (int number = 0; number <= PASSED; number++) {
        all.add(List.of(new Move.Courtesy(number)));
      }
    } else if (judge instanceof Judging judging) {
      PassStep step = moment instanceof Moment.Pass pass ? pass.step() : PassStep.RIGHT_2;
      List<Integer> least = tiles(view, judging.passes(view, step));
      if (moment instanceof Moment.CourtesyGive give) {
        all.addAll(sets(least, give.number(), 0));
      } else {
        all.addAll(passes(least, LegalMoves.blindMost(view.table().rules(), step)));
      }
    }
    return all;
  }

  /** Tiles that may be passed, those missed least first. */
  private static List<Integer> tiles(SeatView view, List<Weighed> ranked) {
    List<Integer> tiles = new ArrayList<>();
    for (Weighed one : ranked) {
      for (int kind : ((Move.Pass) one.move()).own()) {
        long named = tiles.stream().filter(other -> other == kind).count();
        if (kind != Tile.JOKER && named < view.held(kind)) {
          tiles.add(kind);
        }
      }
    }
    return tiles;
  }

  /** Three of the rack in turn with fewer and some unseen. */
  private static List<List<Move>> passes(List<Integer> least, int blindMost) {
    List<List<List<Move>>> columns = new ArrayList<>();
    for (int blind = 0; blind <= blindMost; blind++) {
      columns.add(sets(least, PASSED - blind, blind));
    }
    List<List<Move>> all = new ArrayList<>();
    int longest = columns.stream().mapToInt(List::size).max().orElse(0);
    for (int row = 0; row < longest; row++) {
      for (List<List<Move>> column : columns) {
        if (row < column.size() && !all.contains(column.get(row))) {
          all.add(column.get(row));
        }
      }
    }
    return all;
  }

  /** All sets of some tiles, those first of which the last place is first, then the next. */
  private static List<List<Move>> sets(List<Integer> tiles, int size, int blind) {
    List<List<Move>> all = new ArrayList<>();
    for (int places = (1 << size) - 1; places < 1 << tiles.size(); places++) {
      if (Integer.bitCount(places) == size) {
        List<Integer> own = new ArrayList<>();
        for (int at = 0; at < tiles.size(); at++) {
          if ((places >> at & 1) != 0) {
            own.add(tiles.get(at));
          }
        }
        List<Move> move = List.of(new Move.Pass(own, blind));
        if (!all.contains(move)) {
          all.add(move);
        }
      }
    }
    return all;
  }
}
