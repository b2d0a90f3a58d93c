package org.tallywall.strategies.guess;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** What a seat knows of the passes so far, and what must be true because of it. */
final class KnownPasses {
  private static final int TILES = 3;

  private final int own;
  private final List<SeatView.PassSeen> steps = new ArrayList<>();
  private SeatView.PassSeen courtesy;
  private final Rack before = new Rack();
  private boolean known = true;

  /**
   * Takes them from a view.
   *
   * @param view what the seat knows
   */
  KnownPasses(SeatView view) {
    own = view.seat();
    int[] counts = new int[Tile.KINDS];
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      counts[kind] = view.held(kind);
    }
    for (SeatView.PassSeen pass : view.passes()) {
      if (pass.step() == null) {
        courtesy = pass;
      } else {
        known &= pass.step() == PassStep.values()[steps.size()] && whole(pass);
        steps.add(pass);
      }
      pass.given().forEach(kind -> counts[kind]++);
      pass.received().forEach(kind -> counts[kind]--);
    }
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      known &= counts[kind] >= 0;
      before.add(kind, Math.max(0, counts[kind]));
    }
    known &= before.total() == view.rackSize();
  }

  private boolean whole(SeatView.PassSeen pass) {
    int blind = pass.blind().get(own);
    return pass.given().size() == TILES - blind && pass.received().size() == TILES - blind;
  }

  /**
   * Whether all passes so far are known from the first on, so that they can be played again.
   *
   * @return false too where there was none
   */
  boolean known() {
    return known && !steps.isEmpty();
  }

  /** What the seat held before the first of them. */
  Rack before() {
    return before;
  }

  /** How many passes were made, the one across by agreement left out. */
  int made() {
    return steps.size();
  }

  /** The pass across by agreement, or null where there was none yet. */
  SeatView.PassSeen courtesy() {
    return courtesy;
  }

  /** What the seat saw of a pass; null for one that was not made. */
  SeatView.PassSeen of(PassStep step) {
    return step.ordinal() < steps.size() ? steps.get(step.ordinal()) : null;
  }

  /**
   * What a seat must have handed to the one that looks in a pass: nothing where tiles went on
   * unseen, since nobody knows whose they were.
   *
   * @param step the pass
   * @param from who handed it over
   * @return kinds
   */
  List<Integer> handedOver(PassStep step, int from) {
    SeatView.PassSeen pass = of(step);
    boolean forced = pass != null && step.from(own) == from && pass.blind().get(from) == 0;
    return forced ? pass.received() : List.of();
  }

  /**
   * What a seat must have handed to the one that looks from a pass on.
   *
   * @param from who
   * @param first the first pass that counts
   * @return kinds, the pass across by agreement included
   */
  List<Integer> handedOverFrom(PassStep first, int from) {
    List<Integer> all = new ArrayList<>();
    for (PassStep step : PassStep.values()) {
      if (step.ordinal() >= first.ordinal()) {
        all.addAll(handedOver(step, from));
      }
    }
    if (courtesy != null && from == Seats.across(own)) {
      all.addAll(courtesy.received());
    }
    return all;
  }

  /**
   * How many tiles of a kind a seat was given last, so that they must still be there: none where
   * tiles of that pass went on unseen.
   *
   * @param seat who may have got them
   * @param kind their kind
   */
  int givenLast(int seat, int kind) {
    SeatView.PassSeen last = courtesy != null ? courtesy : steps.get(steps.size() - 1);
    int to = courtesy != null ? Seats.across(own) : last.step().to(own);
    boolean there = to == seat && last.blind().get(seat) == 0;
    return there ? Collections.frequency(last.given(), kind) : 0;
  }
}
