package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.SeenDiscards;
import org.tallywall.core.tile.Exposure;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.MomentWords;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.SpokenTiles;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.html.Resource;
import org.tallywall.reports.markup.Element;

/** Draws what one seat knows at a moment: its rack, exposures, discards and the question. */
public final class PositionDrawing {
  private static final SpokenTiles SPOKEN = new SpokenTiles();

  private final SeatView view;
  private final Moment moment;
  private final SeatNames seats;
  private final List<String> words = new ArrayList<>();
  private final Element box = Element.of("div").with("class", "position");

  private PositionDrawing(SeatView view, Moment moment, SeatNames seats) {
    this.view = view;
    this.moment = moment;
    this.seats = seats;
  }

  /**
   * The styles that a page with such drawings needs.
   *
   * @return rules of CSS
   */
  public static String style() {
    return Resource.text(PositionDrawing.class, "position.css");
  }

  /**
   * The drawings of all tiles, which a page needs once, before the first position.
   *
   * @return a part of a page; in words it is nothing
   */
  public static Part.Drawing tiles() {
    return new Part.Drawing(TileDrawings.all(), "");
  }

  /**
   * Draws a position.
   *
   * @param view what the seat knows
   * @param moment what it is asked
   * @param seats what the seats are called
   * @return a part of a page, with the same in words
   */
  public static Part.Drawing of(SeatView view, Moment moment, SeatNames seats) {
    PositionDrawing drawing = new PositionDrawing(view, moment, seats);
    drawing.draw();
    return new Part.Drawing(
        drawing.box,
        drawing.words.get(0)
            + " "
            + String.join("; ", drawing.words.subList(1, drawing.words.size()))
            + ".");
  }

  private void draw() {
    String question = MomentWords.question(moment, seats, new TypedTiles());
    String who = "Seat " + view.seat() + " (" + seats.of(view.seat()) + ")";
    box.add(Element.of("p", who + ". " + question).with("class", "asked"));
    words.add(who + ". " + question);
    if (moment instanceof Moment.Offer offer) {
      row("On offer", "offer", List.of(offer.tile()));
    }
    Rack rack = new Rack();
    view.copyRack(rack);
    row("Rack", "rack", kinds(rack.tiles()));
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      if (!view.exposures(seat).isEmpty()) {
        exposures(seat);
      }
    }
    if (moment.inPlay()) {
      discards();
      String left = "Tiles left in the wall: " + view.wallLeft();
      box.add(Element.of("p", left).with("class", "left-over"));
      words.add(left);
    }
  }

  private void exposures(int seat) {
    Element groups = Element.of("div").with("class", "exposures");
    List<String> typed = new ArrayList<>();
    List<String> spoken = new ArrayList<>();
    for (Exposure exposure : view.exposures(seat)) {
      Element group = Element.of("span").with("class", "group");
      for (int at = 0; at < exposure.size(); at++) {
        group.add(tile(at < exposure.naturals() ? exposure.kind() : Tile.JOKER));
      }
      groups.add(group);
      typed.add(exposure.toString());
      spoken.add(SPOKEN.exposure(exposure));
    }
    String name = "Exposed by seat " + seat + " (" + seats.of(seat) + ")";
    add(name, groups, String.join("; ", spoken));
    words.add(name + ": " + String.join(" ", typed));
  }

  private void discards() {
    SeenDiscards seen = SeenDiscards.of(view);
    boolean order = seen.inOrder() && !seen.kinds().isEmpty();
    row(order ? "Discards, in the order thrown" : "Discards", "discards", seen.kinds());
  }

  private static List<Integer> kinds(int[] tiles) {
    List<Integer> kinds = new ArrayList<>();
    for (int kind : tiles) {
      kinds.add(kind);
    }
    return kinds;
  }

  private void row(String name, String kind, List<Integer> tiles) {
    if (tiles.isEmpty()) {
      return;
    }
    Element row = Element.of("div").with("class", kind);
    tiles.forEach(one -> row.add(tile(one)));
    add(name, row, String.join(", ", tiles.stream().map(SPOKEN::tile).toList()));
    words.add(name + ": " + new TypedTiles().tiles(tiles));
  }

  private void add(String name, Element tiles, String spoken) {
    box.add(Element.of("p", name).with("class", "name"));
    box.add(tiles.with("role", "img").with("aria-label", name + ": " + spoken));
  }

  private static Element tile(int kind) {
    Element use = Element.of("use").with("href", "#" + TileDrawings.name(Tile.symbol(kind)));
    return Element.of("svg")
        .with("class", "tile")
        .with("viewBox", "0 0 60 80")
        .with("aria-hidden", "true")
        .add(use);
  }
}
