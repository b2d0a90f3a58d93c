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
    whole.put("events", game.events().stream().map(RecordJson::event).toList());
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

  private static Map<String, Object> event(GameEvent event) {
    Map<String, Object> json = new LinkedHashMap<>();
    if (event instanceof GameEvent.Pass pass) {
      json.put("event", "pass");
      json.put("step", pass.step());
      json.put("from", pass.from());
      json.put("to", pass.to());
      json.put("own", tiles(pass.own()));
      json.put("forwarded", tiles(pass.forwarded()));
    } else if (event instanceof GameEvent.Stop stop) {
      json.put("event", "stop");
      json.put("seats", stop.seats());
    } else if (event instanceof GameEvent.Courtesy courtesy) {
      json.put("event", "courtesy");
      json.put("seats", courtesy.seats());
      json.put("asked", courtesy.asked());
      json.put("tiles", courtesy.tiles().stream().map(RecordJson::tiles).toList());
    } else {
      playEvent(event, json);
    }
    return json;
  }

  private static void playEvent(GameEvent event, Map<String, Object> json) {
    if (event instanceof GameEvent.Draw draw) {
      seatEvent(json, "draw", draw.seat());
      json.put("tile", Tile.symbol(draw.tile()));
    } else if (event instanceof GameEvent.Exchange exchange) {
      seatEvent(json, "exchange", exchange.seat());
      json.put("owner", exchange.owner());
      json.put("exposure", exchange.exposure());
      json.put("tile", Tile.symbol(exchange.tile()));
    } else if (event instanceof GameEvent.Discard discard) {
      seatEvent(json, "discard", discard.seat());
      json.put("tile", Tile.symbol(discard.tile()));
    } else if (event instanceof GameEvent.Claim claim) {
      claim(claim, json);
    } else if (event instanceof GameEvent.Dead dead) {
      seatEvent(json, "dead", dead.seat());
      json.put("why", "impossible");
    } else if (event instanceof GameEvent.Mahjong mahjong) {
      mahjong(mahjong, json);
    } else {
      json.put("event", event instanceof GameEvent.WallGame ? "wall-game" : "void");
    }
  }

  private static void seatEvent(Map<String, Object> json, String name, int seat) {
    json.put("event", name);
    json.put("seat", seat);
  }

  private static void claim(GameEvent.Claim claim, Map<String, Object> json) {
    seatEvent(json, "claim", claim.seat());
    json.put("from", claim.from());
    json.put("tile", Tile.symbol(claim.tile()));
    if (claim.kind() != claim.tile()) {
      json.put("kind", Tile.symbol(claim.kind()));
    }
    json.put("size", claim.size());
    json.put("jokers", claim.jokers());
    json.put("also", claim.losers().exposures());
    if (!claim.losers().mahjongs().isEmpty()) {
      json.put("also-mahjong", claim.losers().mahjongs());
    }
  }

  private static void mahjong(GameEvent.Mahjong mahjong, Map<String, Object> json) {
    seatEvent(json, "mahjong", mahjong.seat());
    json.put("by", mahjong.by());
    if (mahjong.from() >= 0) {
      json.put("from", mahjong.from());
      json.put("also", mahjong.losers().exposures());
      json.put("also-mahjong", mahjong.losers().mahjongs());
    }
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

  private static List<String> tiles(List<Integer> kinds) {
    return kinds.stream().map(Tile::symbol).toList();
  }
}
