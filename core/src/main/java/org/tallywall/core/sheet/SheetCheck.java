package org.tallywall.core.sheet;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.sheet.WordReader.Seen;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.Place;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Tile;

/** Checks what the lines of a sheet say together, by the card and the rules. */
final class SheetCheck {
  /** Lines that a message names; nobody looks at more. */
  private static final int MOST_NAMED = 8;

  private final SheetDraft draft;
  private final TableSetup setup;
  private final Faults faults;

  SheetCheck(SheetDraft draft, TableSetup setup, Faults faults) {
    this.draft = draft;
    this.setup = setup;
    this.faults = faults;
  }

  void check() {
    boolean misread = faults.any();
    copies();
    exposures();
    boolean asked = said("seat", "who is asked, as in \"seat 2\"");
    asked &= said("moment", "the question, as in \"moment turn\"");
    asked &= said("rack", "the concealed tiles, as in \"rack 113b 99d S RG0 FF\"");
    if (misread || !asked) {
      return;
    }
    wall();
    rack();
    question();
    if (!faults.any()) {
      table();
      new HeardCheck(draft, setup, faults).check();
      new ChoiceCheck(draft, setup.rules(), faults).check();
    }
  }

  private boolean said(String line, String what) {
    if (!draft.says(line)) {
      faults.fault(
          Place.FILE,
          String.format(Locale.ROOT, "the line \"%s\" is missing: it says %s", line, what));
    }
    return draft.says(line);
  }

  /** No kind has more copies on the sheet than there are. */
  private void copies() {
    int[] count = new int[Tile.KINDS];
    for (Seen seen : draft.shown) {
      int copies = setup.rules().tiles().copies(seen.kind());
      if (++count[seen.kind()] == copies + 1) {
        faults.fault(
            seen.place(),
            String.format(
                Locale.ROOT,
                "this is one %s too many: there are only %d, and the sheet shows them in %s",
                Tile.symbol(seen.kind()),
                copies,
                lines(seen.kind())));
      }
    }
  }

  private String lines(int kind) {
    Set<String> lines = new LinkedHashSet<>();
    for (Seen seen : draft.shown) {
      if (seen.kind() == kind && lines.size() < MOST_NAMED) {
        lines.add(String.valueOf(seen.place().line()));
      }
    }
    return (lines.size() == 1 ? "line " : "lines ") + String.join(", ", lines);
  }

  /** Each exposure, with those before it, must leave a line possible, where the rules say so. */
  private void exposures() {
    for (int seat = 0; seat < Seats.COUNT && setup.rules().claims().strictFit(); seat++) {
      List<Exposure> laid = draft.exposures.get(seat);
      for (int last = 0; last < laid.size(); last++) {
        if (setup.hands().reach(laid.subList(0, last + 1)).size() == 0) {
          String others =
              last == 0 ? "" : " together with " + SheetWords.exposures(laid.subList(0, last));
          faults.fault(
              draft.exposurePlaces.get(seat).get(last),
              String.format(
                  Locale.ROOT,
                  "no line of the card allows the exposure %s%s",
                  laid.get(last),
                  others));
          break;
        }
      }
    }
  }

  private void wall() {
    int most = setup.rules().tiles().size() - 53;
    if (draft.moment.inPlay() && !draft.says("wall") && !draft.says("unseen")) {
      faults.fault(
          Place.FILE, "the line \"wall\" is missing: it says how many tiles the wall has left");
    } else if (draft.wall > most) {
      faults.fault(
          draft.place("wall"),
          String.format(
              Locale.ROOT, "after the deal the wall has %d tiles, not %d", most, draft.wall));
    }
  }

  private void rack() {
    int whole = SheetCounts.tiles(draft, draft.seat);
    int exposed = draft.exposed(draft.seat);
    int held = draft.rack.total();
    if (held + exposed != whole) {
      String open = exposed == 0 ? "" : String.format(Locale.ROOT, " and %d exposed", exposed);
      faults.fault(
          draft.place("rack"),
          String.format(
              Locale.ROOT,
              "%d tiles on the rack%s; at this moment seat %d holds %d in all",
              held,
              open,
              draft.seat,
              whole));
    }
  }

  private void question() {
    if (draft.moment instanceof Moment.Offer offer) {
      offer(offer);
    } else if (draft.moment instanceof Moment.Turn turn
        && turn.drawn() != SheetDraft.NONE
        && draft.rack.held(turn.drawn()) == 0
        && !draft.heard.gaveNow(turn.drawn())) {
      faults.fault(
          draft.place("moment"),
          String.format(
              Locale.ROOT,
              "the tile drawn, %s, belongs on the rack too",
              Tile.symbol(turn.drawn())));
    }
    for (int seat = 0; seat < Seats.COUNT && !draft.moment.inPlay(); seat++) {
      if (!draft.exposures.get(seat).isEmpty()) {
        faults.fault(
            draft.exposurePlaces.get(seat).get(0), "during the passes nothing is exposed yet");
      }
    }
    if (!draft.moment.inPlay() && !draft.discards.isEmpty()) {
      faults.fault(draft.place("discards"), "during the passes nothing is discarded yet");
    }
  }

  private void offer(Moment.Offer offer) {
    if (offer.from() == draft.seat) {
      faults.fault(
          draft.place("moment"),
          String.format(
              Locale.ROOT, "seat %d cannot claim its own discard; name another seat", draft.seat));
    }
    if (offer.tile() == Tile.JOKER && !setup.rules().jokers().discardClaimable()) {
      faults.fault(draft.place("moment"), "a discarded joker cannot be claimed");
    }
  }

  /** What lies on the table must leave enough tiles for the wall and the racks. */
  private void table() {
    if (draft.says("unseen") && draft.says("discards")) {
      faults.fault(
          draft.place("unseen"), "write either the discards or the unseen tiles, not both");
    } else if (draft.says("unseen")) {
      int unseen = draft.unseenTiles();
      int hidden = SheetCounts.wall(draft, setup) + SheetCounts.others(draft);
      if (unseen != hidden || SheetCounts.wall(draft, setup) < 0) {
        faults.fault(
            draft.place("unseen"),
            String.format(
                Locale.ROOT,
                "%d unseen tiles; the wall and the other racks have %d",
                unseen,
                hidden));
      }
    } else if (draft.discards.size() > SheetCounts.discards(draft, setup)) {
      faults.fault(
          draft.place("discards"),
          String.format(
              Locale.ROOT,
              "%d discards; with %d tiles in the wall there can be only %d%s",
              draft.discards.size(),
              SheetCounts.wall(draft, setup),
              Math.max(0, SheetCounts.discards(draft, setup)),
              draft.moment instanceof Moment.Offer ? " without the tile on offer" : ""));
    }
  }
}
