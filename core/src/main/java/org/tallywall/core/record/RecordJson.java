package org.tallywall.core.record;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.tile.Tile;
import tools.jackson.databind.json.JsonMapper;

/** Writes a record as one line of JSON: the same game gives the same bytes. */
public final class RecordJson {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private RecordJson() {}

  /**
   * A record as JSON.
   *
   * @param game the record
   * @return one line without a line end
   */
  public static String line(GameRecord game) {
    Map<String, Object> whole = new LinkedHashMap<>();
    header(game.header(), whole);
    whole.put("wall", tiles(game.wall()));
    whole.put("dice", game.dice());
    whole.put("events", game.events().stream().map(event -> event.match(EventJson.CASES)).toList());
    whole.put("end", end(game.end()));
    return MAPPER.writeValueAsString(whole);
  }

  private static void header(GameRecord.Header header, Map<String, Object> whole) {
    whole.put("format", GameRecord.FORMAT);
    if (!header.study().isEmpty()) {
      whole.put("study", header.study());
    }
    whole.put("seed", String.valueOf(header.seed()));
    whole.put("game", header.game());
    whole.put("deal", header.deal());
    if (!header.arm().isEmpty()) {
      whole.put("arm", header.arm());
    }
    if (header.seat() >= 0) {
      whole.put("seat", header.seat());
    }
    Map<String, Object> card = new LinkedHashMap<>();
    card.put("card", header.card().card());
    card.put("digest", header.card().digest());
    whole.put("card", card);
    whole.put("rules", header.rules());
    whole.put("players", header.players());
  }

  private static Map<String, Object> end(GameRecord.End end) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("how", end.how());
    if (end.win() != null) {
      json.put("seat", end.win().seat());
      json.put("by", end.win().by());
      if (end.win().from() >= 0) {
        json.put("from", end.win().from());
      }
      json.put("line", end.win().line());
      json.put("hand", end.win().hand());
      json.put("value", end.win().value());
      json.put("jokerless", end.win().jokerless());
    }
    json.put("points", end.points());
    json.put("wall", end.wall());
    return json;
  }

  static List<String> tiles(List<Integer> kinds) {
    return kinds.stream().map(Tile::symbol).toList();
  }
}
