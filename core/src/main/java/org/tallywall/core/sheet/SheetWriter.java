package org.tallywall.core.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;

/**
 * Writes down what a seat knows at a moment, as the text of a position sheet. A sheet that is read
 * from this text says the same, with one exception: how many events the game has had is no
 * knowledge of a player's and has no line.
 */
public final class SheetWriter {
  private static final int WIDTH = 90;
  private static final String NAME = "%-8s ";
  private static final String FURTHER = " ".repeat(9);

  private final SeatView view;
  private final Moment moment;
  private final StringBuilder text = new StringBuilder();

  private SheetWriter(SeatView view, Moment moment) {
    this.view = view;
    this.moment = moment;
  }

  /**
   * Writes a sheet.
   *
   * @param view what the seat knows, while it is asked
   * @param moment the question that is put to it
   * @return the lines, each with its end
   */
  public static String text(SeatView view, Moment moment) {
    SheetWriter writer = new SheetWriter(view, moment);
    writer.position();
    writer.passes();
    writer.heard();
    return writer.text.toString();
  }

  private void position() {
    line("seat", List.of(String.valueOf(view.seat())));
    line("moment", List.of(moment.text()));
    if (moment.inPlay()) {
      line("wall", List.of(String.valueOf(view.wallLeft())));
    }
    Rack rack = new Rack();
    view.copyRack(rack);
    line("rack", tiles(rack));
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (!view.exposures(seat).isEmpty()) {
        line("exposed", behind(seat, view.exposures(seat).stream().map(Exposure::toString)));
      }
    }
    if (moment.inPlay()) {
      discards();
    }
  }

  private void discards() {
    SeenDiscards seen = SeenDiscards.of(view);
    if (seen.kinds().isEmpty()) {
      return;
    }
    List<String> words = new ArrayList<>();
    if (seen.inOrder()) {
      words.add("in order");
      for (int at = 0; at < seen.kinds().size(); at++) {
        words.add(view.discardSeat(at) + ":" + Tile.symbol(seen.kinds().get(at)));
      }
    } else {
      words.addAll(tiles(rack(seen.kinds())));
    }
    line("discards", words);
  }

  private void passes() {
    for (SeatView.PassSeen pass : view.passes()) {
      String step = pass.step() == null ? "courtesy" : pass.step().text();
      passed("passed", step, pass.given());
      passed("received", step, pass.received());
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        int blind = pass.blind().get(seat);
        if (blind > 0) {
          line("blind", List.of(String.valueOf(seat), step, String.valueOf(blind)));
        }
      }
    }
  }

  private void passed(String name, String step, List<Integer> kinds) {
    List<String> words = new ArrayList<>(List.of(step));
    words.addAll(kinds.isEmpty() ? List.of("nothing") : tiles(rack(kinds)));
    line(name, words);
  }

  private static Rack rack(List<Integer> kinds) {
    Rack rack = new Rack();
    kinds.forEach(rack::add);
    return rack;
  }

  private void heard() {
    List<Integer> dead = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (view.dead(seat)) {
        dead.add(seat);
      }
    }
    seats("dead", dead);
    seats("stopped", view.stoppers());
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (view.courtesyAsked(seat) >= 0) {
        line("courtesy", List.of(seat + " " + view.courtesyAsked(seat)));
      }
    }
    int earlier = view.exchanges().size() - view.exchangesThisTurn();
    for (int at = 0; at < view.exchanges().size(); at++) {
      SeatView.ExchangeSeen one = view.exchanges().get(at);
      List<String> words = new ArrayList<>(List.of(String.valueOf(one.seat())));
      words.addAll(List.of(Tile.symbol(one.tile()), "from", String.valueOf(one.owner())));
      if (firstOf(one.tile(), view.exposures(one.owner())) != one.exposure()) {
        words.addAll(List.of("group", String.valueOf(one.exposure() + 1)));
      }
      if (at >= earlier) {
        words.add("now");
      }
      line("exchanged", words);
    }
    for (SeatView.LostClaim one : view.lostClaims()) {
      String what = one.seat() + " " + Tile.symbol(one.tile());
      line("lost", List.of(one.mahjong() ? what + " mahjong" : what));
    }
  }

  /** The first exposure of a kind, which is meant where no group is written. */
  static int firstOf(int kind, List<Exposure> exposures) {
    for (int at = 0; at < exposures.size(); at++) {
      if (exposures.get(at).kind() == kind) {
        return at;
      }
    }
    return SheetDraft.NONE;
  }

  private void seats(String name, List<Integer> seats) {
    if (!seats.isEmpty()) {
      line(name, seats.stream().map(String::valueOf).toList());
    }
  }

  private static List<String> behind(int seat, Stream<String> words) {
    List<String> all = new ArrayList<>(List.of(String.valueOf(seat)));
    words.forEach(all::add);
    return all;
  }

  /** Words of tiles; one word holds at most as many of a kind as the usual set has. */
  private static List<String> tiles(Rack rack) {
    List<String> words = new ArrayList<>();
    Rack left = rack.copy();
    while (left.total() > 0) {
      Rack part = new Rack();
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        part.add(kind, Math.min(left.held(kind), TileSet.USUAL.copies(kind)));
        left.remove(kind, part.held(kind));
      }
      words.addAll(List.of(part.toString().split(" ")));
    }
    return words;
  }

  /** A line; what is too long for it goes on indented. */
  private void line(String name, List<String> words) {
    StringBuilder line = new StringBuilder(String.format(Locale.ROOT, NAME, name));
    String gap = "";
    for (String word : words) {
      if (line.length() + 1 + word.length() > WIDTH) {
        text.append(line).append('\n');
        line.setLength(0);
        line.append(FURTHER);
        gap = "";
      }
      line.append(gap).append(word);
      gap = " ";
    }
    text.append(line).append('\n');
  }
}
