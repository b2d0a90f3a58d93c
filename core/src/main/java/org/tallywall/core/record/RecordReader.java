package org.tallywall.core.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.card.CardLimits;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FaultyFileException;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.core.tile.NotationException;
import org.tallywall.core.tile.TileText;

/** Reads a record from one line of JSON. */
public final class RecordReader {
  private static final List<String> HEADER =
      List.of(
          "format", "study", "seed", "game", "deal", "arm", "seat", "card", "rules", "players",
          "wall", "dice", "events", "end");
  private static final List<String> END =
      List.of("how", "seat", "by", "from", "line", "hand", "value", "jokerless", "points", "wall");
  private static final List<String> WIN =
      List.of("seat", "by", "from", "line", "hand", "value", "jokerless");
  private static final String OFWIN = "it as in the end of another won game";
  private static final long MOST = 1L << 40;

  private final Faults faults = new Faults();

  private RecordReader() {}

  /**
   * Reads a record.
   *
   * @param name what to call the text in messages, as in "line 3 of games.jsonl"
   * @param text one line of JSON
   * @return the record
   * @throws FaultyFileException if it is no record of this format
   */
  public static GameRecord read(String name, String text) {
    RecordReader reader = new RecordReader();
    Node root = LocatedJson.read(text, reader.faults);
    GameRecord game = root == null ? null : reader.game(root);
    if (reader.faults.any()) {
      throw new FaultyFileException(name, reader.faults.faults());
    }
    return game;
  }

  private GameRecord game(Node root) {
    FieldReader fields = new FieldReader(root, "a record", faults, HEADER);
    for (String needed : List.of("format", "seed", "deal", "card", "players", "wall", "events")) {
      fields.require(needed, "it as in another record");
    }
    if (!fields.require("end", "how the game ended") || faults.any()) {
      return null;
    }
    if (!GameRecord.FORMAT.equals(fields.text("format", ""))) {
      fields.fault("format", "the format is not " + GameRecord.FORMAT);
      return null;
    }
    GameRecord.Header header = header(fields);
    List<Integer> wall = tiles(fields, "wall");
    List<Integer> dice = wholes(fields, "dice");
    List<GameEvent> events = new ArrayList<>();
    for (Node event : fields.list("events")) {
      events.add(new EventReader(event, faults).read());
    }
    GameRecord.End end = end(fields.node("end"));
    return faults.any() ? null : new GameRecord(header, wall, dice, events, end);
  }

  private GameRecord.Header header(FieldReader fields) {
    FieldReader card =
        new FieldReader(fields.node("card"), "the card", faults, List.of("card", "digest"));
    return new GameRecord.Header(
        fields.text("study", ""),
        seed(fields),
        fields.whole("game", 0, 0, MOST),
        fields.whole("deal", 0, 0, MOST),
        fields.text("arm", ""),
        (int) fields.whole("seat", -1, 0, 3),
        new GameRecord.CardName(card.text("card", ""), card.text("digest", "")),
        rules(fields),
        players(fields));
  }

  private static long seed(FieldReader fields) {
    try {
      return Long.parseLong(fields.text("seed", "0"));
    } catch (NumberFormatException wrong) {
      fields.fault("seed", "the seed is a whole number in quotes");
      return 0;
    }
  }

  private GameRecord.End end(Node node) {
    FieldReader end = new FieldReader(node, "the end", faults, END);
    GameRecord.Win win = null;
    if (WIN.stream().anyMatch(end::has)) {
      WIN.stream()
          .filter(field -> !field.equals("from"))
          .forEach(field -> end.require(field, OFWIN));
      win =
          new GameRecord.Win(
              (int) end.whole("seat", 0, 0, 3),
              end.text("by", ""),
              (int) end.whole("from", -1, 0, 3),
              end.text("line", ""),
              texts(end, "hand"),
              (int) end.whole("value", 1, 1, CardLimits.MOST_VALUE),
              end.flag("jokerless", false));
    }
    return new GameRecord.End(
        end.text("how", ""), win, wholes(end, "points"), (int) end.whole("wall", 0, 0, 200));
  }

  private List<Integer> tiles(FieldReader fields, String name) {
    return tiles(fields.list(name), faults);
  }

  static List<Integer> tiles(List<Node> nodes, Faults faults) {
    List<Integer> tiles = new ArrayList<>();
    for (Node node : nodes) {
      try {
        tiles.add(TileText.tile(node.value() instanceof String text ? text : ""));
      } catch (NotationException wrong) {
        faults.fault(node.place(), wrong.getMessage());
      }
    }
    return tiles;
  }

  static List<Integer> wholes(FieldReader fields, String name) {
    List<Integer> wholes = new ArrayList<>();
    for (Node node : fields.list(name)) {
      if (plain(node) instanceof Integer whole) {
        wholes.add(whole);
      } else {
        fields.fault(name, "\"" + name + "\" holds whole numbers only");
      }
    }
    return wholes;
  }

  private static List<String> texts(FieldReader fields, String name) {
    List<String> texts = new ArrayList<>();
    for (Node node : fields.list(name)) {
      if (node.value() instanceof String text) {
        texts.add(text);
      } else {
        fields.fault(name, "\"" + name + "\" holds texts in double quotes only");
      }
    }
    return texts;
  }

  /** The switches; a record without them was played by the usual rules. */
  private static Map<String, Object> rules(FieldReader fields) {
    if (fields.has("rules") && fields.node("rules").value() instanceof Node.Fields) {
      return asMap(fields.node("rules"));
    } else if (fields.has("rules")) {
      fields.fault("rules", "\"rules\" is an object in braces");
    }
    return Map.of();
  }

  private static List<Object> players(FieldReader fields) {
    List<Object> players = new ArrayList<>();
    for (Node node : fields.list("players")) {
      if (node.value() instanceof String || node.value() instanceof Node.Fields) {
        players.add(plain(node));
      } else {
        fields.fault("players", "\"players\" holds names and objects in braces only");
      }
    }
    return players;
  }

  private static Map<String, Object> asMap(Node node) {
    Map<String, Object> map = new LinkedHashMap<>();
    ((Node.Fields) node.value()).values().forEach((key, value) -> map.put(key, plain(value)));
    return map;
  }

  private static Object plain(Node node) {
    if (node.value() instanceof Node.Fields) {
      return asMap(node);
    } else if (node.value() instanceof Node.Items items) {
      return items.values().stream().map(RecordReader::plain).toList();
    } else if (node.value() instanceof java.math.BigDecimal number) {
      try {
        return number.intValueExact();
      } catch (ArithmeticException large) {
        return number;
      }
    }
    return node.value();
  }
}
