package org.tallywall.core.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What was passed, said and lost during a game, so that views can tell it again. */
final class TableTalk {
  private final List<List<SeatView.PassSeen>> passes = new ArrayList<>();
  private final List<Integer> stoppers = new ArrayList<>();
  private final int[] courtesy = new int[Seats.COUNT];
  private final List<SeatView.ExchangeSeen> exchanges = new ArrayList<>();
  private final List<SeatView.LostClaim> lost = new ArrayList<>();

  TableTalk() {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      passes.add(new ArrayList<>());
    }
  }

  void clear() {
    passes.forEach(List::clear);
    stoppers.clear();
    Arrays.fill(courtesy, -1);
    exchanges.clear();
    lost.clear();
  }

  /** Sets what a seat has heard; of the others' passes it knows nothing. */
  void set(SeatView seen) {
    clear();
    passes.get(seen.seat()).addAll(seen.passes());
    stoppers.addAll(seen.stoppers());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      courtesy[seat] = seen.courtesyAsked(seat);
    }
    exchanges.addAll(seen.exchanges());
    lost.addAll(seen.lostClaims());
  }

  void passed(int seat, SeatView.PassSeen pass) {
    passes.get(seat).add(pass);
  }

  void stopped(int seat) {
    stoppers.add(seat);
  }

  void asked(int seat, int number) {
    courtesy[seat] = number;
  }

  void exchanged(int seat, int owner, int exposure, int tile) {
    exchanges.add(new SeatView.ExchangeSeen(seat, owner, exposure, tile));
  }

  void lost(int seat, int tile, boolean mahjong) {
    lost.add(new SeatView.LostClaim(seat, tile, mahjong));
  }

  List<SeatView.PassSeen> passes(int seat) {
    return List.copyOf(passes.get(seat));
  }

  List<Integer> stoppers() {
    return List.copyOf(stoppers);
  }

  int courtesyAsked(int seat) {
    return courtesy[seat];
  }

  List<SeatView.ExchangeSeen> exchanges() {
    return List.copyOf(exchanges);
  }

  List<SeatView.LostClaim> lost() {
    return List.copyOf(lost);
  }
}
