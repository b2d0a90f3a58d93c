package org.tallywall.core.sheet;

import java.util.List;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.sheet.WordReader.Seen;
import org.tallywall.core.text.Place;

/** Reads which question a sheet puts. */
final class MomentReader {
  private static final List<String> MOMENTS = List.of("pass", "stop", "courtesy", "turn", "offer");
  private static final int PASSED = 3;

  private MomentReader() {}

  /** Reads the words behind {@code moment}; null where they have a fault. */
  static Moment read(WordReader words, SheetDraft draft) {
    if (words.passWithoutItsWord()) {
      return null;
    }
    String kind = words.oneOf(MOMENTS, "the moment");
    if (kind == null) {
      return null;
    }
    Moment moment =
        switch (kind) {
          case "pass" -> pass(words);
          case "stop" -> new Moment.Stop();
          case "courtesy" -> courtesy(words);
          case "turn" -> turn(words);
          default -> offer(words, draft);
        };
    words.finish("one question a sheet");
    return moment;
  }

  private static Moment pass(WordReader words) {
    PassStep step = words.step();
    return step == null ? null : new Moment.Pass(step);
  }

  private static Moment courtesy(WordReader words) {
    String what = words.oneOf(List.of("ask", "give"), "the moment of the courtesy pass");
    if (what == null) {
      return null;
    }
    if (what.equals("ask")) {
      return new Moment.CourtesyAsk();
    }
    int number = words.number(1, PASSED, "how many go across");
    return number == WordReader.NONE ? null : new Moment.CourtesyGive(number);
  }

  private static Moment turn(WordReader words) {
    if (!words.more()) {
      return new Moment.Turn(SheetDraft.NONE);
    }
    if (words.take("claimed")) {
      return new Moment.Turn(SheetDraft.NONE, true);
    }
    if (!words.take("drew")) {
      words.fault("write \"turn\" alone, \"turn claimed\", or \"turn drew\" and the tile");
      words.rest();
      return null;
    }
    int tile = words.tile("the tile drawn");
    return tile == WordReader.NONE ? null : new Moment.Turn(tile);
  }

  private static Moment offer(WordReader words, SheetDraft draft) {
    Place place = words.place();
    int tile = words.tile("the tile on offer");
    if (!words.take("from") && !words.take("by")) {
      words.fault("write who threw it, as in \"offer 4d from 0\"");
      words.rest();
      return null;
    }
    int seat = words.seat();
    if (tile == WordReader.NONE || seat == WordReader.NONE) {
      return null;
    }
    draft.shown.add(new Seen(tile, place));
    return new Moment.Offer(tile, seat);
  }
}
