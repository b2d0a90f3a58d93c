package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.Player;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.RecordJson;
import org.tallywall.core.record.RecordReader;
import org.tallywall.core.record.Replay;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/**
 * 1,200 games of mixed players by the rules of five tables: written down, read back, and checked
 * event by event by code that knows nothing of the game loop.
 */
@Tag("one-jdk")
class ReplayAgreesTest {
  private static final int GAMES = 1200;
  private static final List<GameRecord> PLAYED = new ArrayList<>();
  private static final List<GameRecord> READ = new ArrayList<>();

  @BeforeAll
  static void play() {
    for (int deal = 0; deal < GAMES; deal++) {
      GameRecord game = TestTable.play(deal, players(deal));
      PLAYED.add(game);
      READ.add(RecordReader.read("deal " + deal, RecordJson.line(game)));
    }
  }

  /** All mixes of the yardstick, the nearest and the others, and each seat sees each of them. */
  private static List<Player> players(int deal) {
    List<String> ids =
        deal % 4 == 3
            ? List.of("nearest", "watchful", "random-legal", "reckoner")
            : List.of("nearest", "random-legal", "nearest", "nearest");
    return IntStream.range(0, 4)
        .mapToObj(seat -> ids.get((seat + deal / 4) % 4))
        .map(id -> new PlayerSpec(Catalog.standard().type(id).orElseThrow(), Map.of()).make())
        .toList();
  }

  @Test
  void recordsReadBack_areThoseWritten() {
    assertThat(READ).isEqualTo(PLAYED);
    for (GameRecord game : READ) {
      GameRecord again = RecordReader.read("again", RecordJson.line(game));
      assertThat(RecordJson.line(again)).isEqualTo(RecordJson.line(game));
    }
  }

  @Test
  void everyGame_agreesWithTheRules() {
    for (GameRecord game : READ) {
      assertThat(Replay.check(TestTable.HANDS, game)).as("deal %d", game.header().deal()).isEmpty();
    }
  }

  /** Points sum to zero, but for what the table pays to all in a wall game. */
  @Test
  void everyGame_balances() {
    for (GameRecord game : READ) {
      TableRules rules = TableRules.of(game.header().rules());
      int paid = game.end().points().stream().mapToInt(Integer::intValue).sum();
      boolean wallGame = game.end().how().equals("wall-game");
      long dead = count(game, GameEvent.Dead.class::isInstance);
      long expected = wallGame ? rules.score().wallGame() * (4 - dead) : 0;
      assertThat(paid).as("deal %d", game.header().deal()).isEqualTo((int) expected);
      int[] tiles = game.wall().stream().mapToInt(Integer::intValue).sorted().toArray();
      assertThat(tiles).isEqualTo(Arrays.stream(rules.tiles().tiles()).sorted().toArray());
      long draws = count(game, GameEvent.Draw.class::isInstance);
      assertThat(game.end().wall()).isEqualTo(tiles.length - 53 - (int) draws);
    }
  }

  /** The games are worth checking: whatever can happen has happened in them. */
  @Test
  void games_holdEveryKindOfEvent() {
    assertThat(all(GameEvent.Mahjong.class::isInstance)).isGreaterThan(300);
    assertThat(all(GameEvent.WallGame.class::isInstance)).isGreaterThan(60);
    assertThat(all(GameEvent.Dead.class::isInstance)).isGreaterThan(12);
    assertThat(all(e -> e instanceof GameEvent.Claim c && c.jokers() > 0)).isGreaterThan(120);
    assertThat(all(e -> e instanceof GameEvent.Claim c && c.tile() == Tile.JOKER)).isPositive();
    assertThat(all(e -> e instanceof GameEvent.Claim c && !c.losers().exposures().isEmpty()))
        .isPositive();
    assertThat(all(e -> e instanceof GameEvent.Exchange x && x.owner() == x.seat())).isPositive();
    assertThat(all(e -> e instanceof GameEvent.Exchange x && x.owner() != x.seat())).isPositive();
    assertThat(all(e -> e instanceof GameEvent.Pass p && p.own().size() == 0)).isPositive();
    assertThat(all(e -> e instanceof GameEvent.Pass p && p.forwarded().size() == 2)).isPositive();
    assertThat(all(e -> e instanceof GameEvent.Pass p && p.own().contains(Tile.JOKER)))
        .isPositive();
    for (String by : List.of("draw", "discard", "exchange")) {
      assertThat(all(e -> e instanceof GameEvent.Mahjong m && m.by().equals(by))).isPositive();
    }
  }

  private static long all(Predicate<GameEvent> like) {
    return READ.stream().mapToLong(game -> count(game, like)).sum();
  }

  private static long count(GameRecord game, Predicate<GameEvent> like) {
    return game.events().stream().filter(like).count();
  }
}
