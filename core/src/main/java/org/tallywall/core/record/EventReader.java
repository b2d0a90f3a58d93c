package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;

/** Reads one event of a record. */
final class EventReader {
  private static final List<String> NAMES =
      List.of(
          "pass",
          "stop",
          "courtesy",
          "draw",
          "exchange",
          "discard",
          "claim",
          "dead",
          "mahjong",
          "wall-game",
          "void");
  private static final List<String> FIELDS =
      List.of(
          "event",
          "step",
          "from",
          "to",
          "own",
          "forwarded",
          "seats",
          "asked",
          "tiles",
          "seat",
          "tile",
          "kind",
          "owner",
          "exposure",
          "size",
          "jokers",
          "also",
          "also-mahjong",
          "why",
          "by");

  private final FieldReader fields;
  private final Faults faults;

  EventReader(Node node, Faults faults) {
    this.faults = faults;
    this.fields = new FieldReader(node, "an event", faults, FIELDS);
  }

  /** The event; a fault is noted where it is none. */
  GameEvent read() {
    fields.require("event", "which event it is");
    String name = fields.text("event", "");
    return switch (name) {
      case "pass" ->
          new GameEvent.Pass(
              fields.text("step", ""), seat("from"), seat("to"), tiles("own"), tiles("forwarded"));
      case "stop" -> new GameEvent.Stop(RecordReader.wholes(fields, "seats"));
      case "courtesy" -> courtesy();
      case "draw" -> new GameEvent.Draw(seat("seat"), tile("tile"));
      case "exchange" ->
          new GameEvent.Exchange(
              seat("seat"), seat("owner"), whole("exposure", 0, 3), tile("tile"));
      case "discard" -> new GameEvent.Discard(seat("seat"), tile("tile"));
      case "claim" -> claim();
      case "dead" -> new GameEvent.Dead(seat("seat"));
      case "mahjong" ->
          new GameEvent.Mahjong(
              seat("seat"),
              fields.text("by", ""),
              fields.has("from") ? seat("from") : -1,
              losers());
      case "wall-game" -> new GameEvent.WallGame();
      case "void" -> new GameEvent.VoidGame();
      default -> {
        fields.fault("event", unknown(name));
        yield new GameEvent.VoidGame();
      }
    };
  }

  private String unknown(String name) {
    String unknown = "unknown event \"" + Shown.word(name) + "\"";
    return faults.enough() ? unknown : unknown + Nearest.hint(name, NAMES);
  }

  private GameEvent courtesy() {
    List<List<Integer>> tiles = new ArrayList<>();
    for (Node list : fields.list("tiles")) {
      if (list.value() instanceof Node.Items items) {
        tiles.add(RecordReader.tiles(items.values(), faults));
      } else {
        fields.fault("tiles", "\"tiles\" holds two lists of tiles");
      }
    }
    return new GameEvent.Courtesy(
        RecordReader.wholes(fields, "seats"), RecordReader.wholes(fields, "asked"), tiles);
  }

  private GameEvent claim() {
    int tile = tile("tile");
    return new GameEvent.Claim(
        seat("seat"),
        seat("from"),
        tile,
        fields.has("kind") ? tile("kind") : tile,
        whole("size", 3, 6),
        whole("jokers", 0, 5),
        losers());
  }

  private GameEvent.Losers losers() {
    return new GameEvent.Losers(
        RecordReader.wholes(fields, "also"), RecordReader.wholes(fields, "also-mahjong"));
  }

  private int seat(String name) {
    return whole(name, 0, 3);
  }

  private int whole(String name, int least, int most) {
    fields.require(name, "a whole number");
    return (int) fields.whole(name, least, least, most);
  }

  private int tile(String name) {
    fields.require(name, "a tile");
    List<Integer> tiles =
        fields.has(name) ? RecordReader.tiles(List.of(fields.node(name)), faults) : List.of();
    return tiles.isEmpty() ? 0 : tiles.get(0);
  }

  private List<Integer> tiles(String name) {
    return RecordReader.tiles(fields.list(name), faults);
  }
}
