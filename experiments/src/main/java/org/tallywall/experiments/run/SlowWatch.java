package org.tallywall.experiments.run;

/**
 * Judges one pulse, look by look. Only time between two looks that follow each other closely
 * counts, so a machine that slept, or a process that was halted, blames no player.
 */
final class SlowWatch {
  private final Pulse pulse;
  private final long limitMillis;
  private final long mostBetweenLooks;
  private long seen;
  private long open;

  /**
   * A watch over one table.
   *
   * @param pulse the table's pulse
   * @param limitMillis how long an answer may take
   * @param mostBetweenLooks the most that counts of the time since the last look, in milliseconds
   */
  SlowWatch(Pulse pulse, long limitMillis, long mostBetweenLooks) {
    this.pulse = pulse;
    this.limitMillis = limitMillis;
    this.mostBetweenLooks = mostBetweenLooks;
  }

  /**
   * Looks at the pulse.
   *
   * @param millis time since the last look
   * @return what to complain about, or null where all is well
   */
  SlowPlayerException look(long millis) {
    long beat = pulse.beat();
    if (beat != seen || !Pulse.isOpen(beat)) {
      seen = beat;
      open = 0;
      return null;
    }
    open += Math.min(millis, mostBetweenLooks);
    return open > limitMillis
        ? new SlowPlayerException(pulse.game(), Pulse.seat(beat), limitMillis)
        : null;
  }
}
