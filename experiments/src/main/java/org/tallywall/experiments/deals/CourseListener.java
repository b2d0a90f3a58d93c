package org.tallywall.experiments.deals;

import java.util.Arrays;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.WinBy;
import org.tallywall.core.tile.Exposure;

/**
 * Remembers the course of a game as one number after each event, so that two games of a deal can be
 * compared: they were alike as long as these numbers are. Two different courses with the same
 * number would need a coincidence of one in 2^64.
 */
final class CourseListener implements GameListener {
  private static final long MULTIPLIER = 0x9E3779B97F4A7C15L;
  private static final int DISCARDED = 6;

  private OpenTable table;
  private long[] prints = new long[512];
  private int[] walls = new int[512];
  private boolean[] discards = new boolean[512];
  private int events;
  private long print;

  @Override
  public void began(OpenTable open) {
    table = open;
    events = 0;
    print = 0;
  }

  /** The course of the game that ended last, copied. */
  Course course() {
    return new Course(
        Arrays.copyOf(prints, events),
        Arrays.copyOf(walls, events),
        Arrays.copyOf(discards, events));
  }

  /** The event that was heard last, from 0. */
  int lastEvent() {
    return events - 1;
  }

  private void mix(long value) {
    long mixed = (print ^ value) * MULTIPLIER;
    print = mixed ^ mixed >>> 32;
  }

  private void mix(int[] values) {
    mix(values.length);
    for (int value : values) {
      mix(value);
    }
  }

  private void event(int kind, int a, int b, int c) {
    mix(kind + 16L * (a + 1) + 4096L * (b + 1) + (1L << 24) * (c + 1));
    if (events == prints.length) {
      prints = Arrays.copyOf(prints, 2 * events);
      walls = Arrays.copyOf(walls, 2 * events);
      discards = Arrays.copyOf(discards, 2 * events);
    }
    prints[events] = print;
    discards[events] = kind == DISCARDED;
    walls[events++] = table.wallLeft();
  }

  @Override
  public void passed(PassStep step, int from, int[] own, int[] forwarded) {
    mix(own);
    mix(forwarded);
    event(1, step.ordinal(), from, 0);
  }

  @Override
  public void stopAsked(int stoppers) {
    event(2, stoppers, 0, 0);
  }

  @Override
  public void courtesy(int low, int[] asked, int[] lowGave, int[] highGave) {
    mix(asked);
    mix(lowGave);
    mix(highGave);
    event(3, low, 0, 0);
  }

  @Override
  public void drew(int seat, int tile) {
    event(4, seat, tile, 0);
  }

  @Override
  public void exchanged(int seat, int owner, int exposure, int tile) {
    mix(exposure);
    event(5, seat, owner, tile);
  }

  @Override
  public void discarded(int seat, int tile) {
    event(DISCARDED, seat, tile, 0);
  }

  @Override
  public void claimed(int seat, int from, int tile, Exposure laid, int also, int alsoMahjong) {
    mix(laid.size());
    mix(laid.jokers());
    event(7, seat, from, tile);
  }

  @Override
  public void died(int seat) {
    event(8, seat, 0, 0);
  }

  @Override
  public void declared(int seat, WinBy by, int from, int also, int alsoMahjong) {
    event(9, seat, by.ordinal(), from);
  }
}
