package org.tallywall.experiments.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tallywall.core.hand.HandMeter;
import org.tallywall.core.hand.Reach;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;

/** Counts what the guessed racks of one opponent show. */
final class OpponentCount {
  private final int seat;
  private final Reach reach;
  private final RackLook look;
  private final double[] lines;
  private final boolean[] near;
  private final int[] away = new int[OpponentReading.FURTHEST + 1];
  private final int[] nearer = new int[Tile.NATURALS];
  private int stuck;
  private int guesses;

  /**
   * Counts for an opponent.
   *
   * @param view what the seat knows that looks
   * @param seat her seat
   */
  OpponentCount(SeatView view, int seat) {
    this.seat = seat;
    reach = view.reach(seat);
    look = new RackLook(view);
    lines = new double[view.table().hands().lines()];
    near = new boolean[lines.length];
  }

  /**
   * Counts one guess.
   *
   * @param rack her concealed tiles
   */
  void add(Rack rack) {
    look.look(rack, reach);
    guesses++;
    if (look.away() == HandMeter.NONE) {
      stuck++;
      return;
    }
    away[Math.min(look.away(), OpponentReading.FURTHEST)]++;
    Arrays.fill(near, false);
    int count = 0;
    for (int at = 0; at < look.hands(); at++) {
      int line = reach.line(look.hand(at));
      count += near[line] ? 0 : 1;
      near[line] = true;
    }
    for (int line = 0; line < lines.length; line++) {
      lines[line] += near[line] ? 1.0 / count : 0;
    }
    for (int kind = 0; kind < nearer.length; kind++) {
      nearer[kind] += look.needs(kind) ? 1 : 0;
    }
  }

  /** Whether the rack counted last waits for a kind. */
  boolean waitsFor(int kind) {
    return look.waitsFor(kind);
  }

  /**
   * What was counted.
   *
   * @param makeable how many of the lines left to her can still be made
   */
  OpponentReading reading(int makeable) {
    List<OpponentReading.LineChance> chances = new ArrayList<>();
    for (int line = 0; line < lines.length; line++) {
      if (lines[line] > 0) {
        chances.add(new OpponentReading.LineChance(line, lines[line] / guesses));
      }
    }
    chances.sort(Comparator.comparingDouble(one -> -one.chance()));
    List<OpponentReading.Need> needs = new ArrayList<>();
    for (int kind = 0; kind < nearer.length; kind++) {
      if (nearer[kind] > 0) {
        needs.add(new OpponentReading.Need(kind, nearer[kind]));
      }
    }
    needs.sort(Comparator.comparingInt(one -> -one.nearer()));
    List<Integer> distances = IntStream.of(away).boxed().toList();
    return new OpponentReading(
        seat, guesses, look.living(reach), makeable, chances, distances, stuck, needs);
  }
}
