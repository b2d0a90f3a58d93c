package org.tallywall.core.record;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tallywall.core.tile.Tile;

/** The fields of each kind of event, in the order in which a record writes them. */
final class EventJson implements GameEvent.Cases<Map<String, Object>> {
  static final EventJson CASES = new EventJson();

  private EventJson() {}

  private static Map<String, Object> named(String name) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("event", name);
    return json;
  }

  private static Map<String, Object> of(String name, int seat) {
    Map<String, Object> json = named(name);
    json.put("seat", seat);
    return json;
  }

  @Override
  public Map<String, Object> pass(GameEvent.Pass pass) {
    Map<String, Object> json = named("pass");
    json.put("step", pass.step());
    json.put("from", pass.from());
    json.put("to", pass.to());
    json.put("own", RecordJson.tiles(pass.own()));
    json.put("forwarded", RecordJson.tiles(pass.forwarded()));
    return json;
  }

  @Override
  public Map<String, Object> stop(GameEvent.Stop stop) {
    Map<String, Object> json = named("stop");
    json.put("seats", stop.seats());
    return json;
  }

  @Override
  public Map<String, Object> courtesy(GameEvent.Courtesy courtesy) {
    Map<String, Object> json = named("courtesy");
    json.put("seats", courtesy.seats());
    json.put("asked", courtesy.asked());
    json.put("tiles", courtesy.tiles().stream().map(RecordJson::tiles).toList());
    return json;
  }

  @Override
  public Map<String, Object> draw(GameEvent.Draw draw) {
    Map<String, Object> json = of("draw", draw.seat());
    json.put("tile", Tile.symbol(draw.tile()));
    return json;
  }

  @Override
  public Map<String, Object> exchange(GameEvent.Exchange exchange) {
    Map<String, Object> json = of("exchange", exchange.seat());
    json.put("owner", exchange.owner());
    json.put("exposure", exchange.exposure());
    json.put("tile", Tile.symbol(exchange.tile()));
    return json;
  }

  @Override
  public Map<String, Object> discard(GameEvent.Discard discard) {
    Map<String, Object> json = of("discard", discard.seat());
    json.put("tile", Tile.symbol(discard.tile()));
    return json;
  }

  @Override
  public Map<String, Object> claim(GameEvent.Claim claim) {
    Map<String, Object> json = of("claim", claim.seat());
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
    return json;
  }

  @Override
  public Map<String, Object> dead(GameEvent.Dead dead) {
    Map<String, Object> json = of("dead", dead.seat());
    json.put("why", "impossible");
    return json;
  }

  @Override
  public Map<String, Object> mahjong(GameEvent.Mahjong mahjong) {
    Map<String, Object> json = of("mahjong", mahjong.seat());
    json.put("by", mahjong.by());
    if (mahjong.from() >= 0) {
      json.put("from", mahjong.from());
      json.put("also", mahjong.losers().exposures());
      json.put("also-mahjong", mahjong.losers().mahjongs());
    }
    return json;
  }

  @Override
  public Map<String, Object> wallGame(GameEvent.WallGame wallGame) {
    return named("wall-game");
  }

  @Override
  public Map<String, Object> voidGame(GameEvent.VoidGame voidGame) {
    return named("void");
  }
}
