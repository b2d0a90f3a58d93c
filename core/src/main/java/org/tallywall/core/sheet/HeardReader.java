package org.tallywall.core.sheet;

import java.util.List;
import java.util.SortedSet;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.text.Place;

/** Reads the lines about what the table heard: dead hands, stops, numbers, exchanges, claims. */
final class HeardReader {
  /** The names of these lines. */
  static final List<String> LINES = List.of("dead", "stopped", "courtesy", "exchanged", "lost");

  private static final int MOST_COURTESY = 3;
  private static final int MOST_EXPOSURES = 4;

  private HeardReader() {}

  static void read(String name, WordReader words, Heard heard) {
    switch (name) {
      case "dead" -> seats(words, heard.dead, "whose hand is dead");
      case "stopped" -> seats(words, heard.stoppers, "who stopped the passes");
      case "courtesy" -> courtesy(words, heard);
      case "exchanged" -> exchanged(words, heard);
      default -> lost(words, heard);
    }
  }

  private static void seats(WordReader words, SortedSet<Integer> into, String what) {
    if (!words.more()) {
      words.fault("write " + what + ", as in 2");
    }
    while (words.more()) {
      int seat = words.seat();
      if (seat != WordReader.NONE) {
        into.add(seat);
      }
    }
  }

  private static void courtesy(WordReader words, Heard heard) {
    int seat = words.seat();
    int number = words.number(0, MOST_COURTESY, "how many tiles the seat asked for");
    words.finish("seat and number, as in 1 2");
    if (seat != WordReader.NONE) {
      heard.courtesy[seat] = number;
    }
  }

  private static void exchanged(WordReader words, Heard heard) {
    Place place = words.place();
    int seat = words.seat();
    int tile = words.tile("the tile that was given for the joker");
    if (!words.take("from") && !words.take("seat")) {
      words.fault("write whose exposure it was, as in \"exchanged 3 5c from 1\"");
      words.rest();
      return;
    }
    int owner = words.seat();
    int group = SheetDraft.NONE;
    if (words.take("group")) {
      group = words.number(1, MOST_EXPOSURES, "which of the seat's exposures it was");
    }
    boolean now = words.take("now");
    words.finish("seat, tile, \"from\" and seat; \"now\" behind it for an exchange in this turn");
    if (seat != WordReader.NONE && tile != WordReader.NONE && owner != WordReader.NONE) {
      int exposure = group == SheetDraft.NONE ? group : group - 1;
      heard.exchanges.add(new Heard.Redeemed(seat, tile, owner, exposure, now, place));
    }
  }

  private static void lost(WordReader words, Heard heard) {
    int seat = words.seat();
    int tile = words.tile("the tile that was claimed");
    boolean mahjong = words.take("mahjong");
    words.finish("seat and tile, with \"mahjong\" behind them where it was claimed for that");
    if (seat != WordReader.NONE && tile != WordReader.NONE) {
      heard.lost.add(new SeatView.LostClaim(seat, tile, mahjong));
    }
  }
}
