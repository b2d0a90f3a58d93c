package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.text.Place;

/** What a sheet says that the whole table heard or saw happen. */
final class Heard {
  final SortedSet<Integer> dead = new TreeSet<>();
  final SortedSet<Integer> stoppers = new TreeSet<>();
  final int[] courtesy = new int[Seats.COUNT];
  final List<Redeemed> exchanges = new ArrayList<>();
  final List<SeatView.LostClaim> lost = new ArrayList<>();

  Heard() {
    Arrays.fill(courtesy, SheetDraft.NONE);
  }

  /**
   * A joker that was redeemed.
   *
   * @param seat who redeemed it
   * @param tile the natural given
   * @param owner whose exposure it was
   * @param exposure which of the owner's exposures, from 0; {@link SheetDraft#NONE} where the sheet
   *     leaves it to the tile
   * @param now whether it happened in the turn that is asked about
   * @param place where it stands
   */
  record Redeemed(int seat, int tile, int owner, int exposure, boolean now, Place place) {
    Redeemed of(int kind, int index) {
      return new Redeemed(seat, kind, owner, index, now, place);
    }
  }

  /** Whether a tile was given for a joker in the turn that is asked about. */
  boolean gaveNow(int tile) {
    return exchanges.stream().anyMatch(one -> one.now() && one.tile() == tile);
  }

  boolean anyCourtesy() {
    return Arrays.stream(courtesy).anyMatch(number -> number != SheetDraft.NONE);
  }
}
