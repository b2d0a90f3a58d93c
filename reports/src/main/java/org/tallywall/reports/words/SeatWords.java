package org.tallywall.reports.words;

import java.util.List;

/** What the four seats are called. */
public final class SeatWords {
  /** The seats as seen from East, East's own first. */
  public static final List<String> FROM_EAST =
      List.of("East", "right of East", "across from East", "left of East");

  private SeatWords() {}
}
