package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.rules.TableRules;

/** 600 games of mixed players by six tables of rules: written, read back, and checked. */
@Tag("one-jdk")
class RoundTripTest {
  private static final int GAMES = 600;
  private static List<GameRecord> games;

  @BeforeAll
  static void play() {
    games = new ArrayList<>();
    List<TableRules> rules = MixedTable.rules();
    for (int deal = 0; deal < GAMES; deal++) {
      games.add(Records.play(rules.get(deal % rules.size()), deal, deal));
    }
  }

  @Test
  void record_readBack_isTheSameAndTheSameBytes() {
    for (GameRecord game : games) {
      String line = RecordJson.line(game);
      GameRecord back = RecordReader.read("a test", line);
      assertThat(back).isEqualTo(game);
      assertThat(RecordJson.line(back)).isEqualTo(line);
    }
  }

  @Test
  void replay_ofEveryGame_findsNothing() {
    for (GameRecord game : games) {
      assertThat(Replay.check(Records.HANDS, game)).as("deal %d", game.header().deal()).isEmpty();
    }
  }

  /** The games are worth checking: each kind of event stands in many of them. */
  @Test
  void games_holdEveryKindOfEvent() {
    assertThat(count(GameEvent.Claim.class)).isGreaterThan(600);
    assertThat(count(GameEvent.Exchange.class)).isGreaterThan(60);
    assertThat(count(GameEvent.Mahjong.class)).isGreaterThan(60);
    assertThat(count(GameEvent.Dead.class)).isGreaterThan(6);
    assertThat(count(GameEvent.WallGame.class)).isGreaterThan(60);
    assertThat(count(GameEvent.Stop.class)).isGreaterThan(150);
    assertThat(count(GameEvent.Courtesy.class)).isGreaterThan(300);
    long byExchange =
        games.stream()
            .flatMap(game -> game.events().stream())
            .filter(event -> event instanceof GameEvent.Mahjong win && win.by().equals("exchange"))
            .count();
    assertThat(byExchange).isPositive();
  }

  private static <E> long count(Class<E> kind) {
    return games.stream().flatMap(game -> game.events().stream()).filter(kind::isInstance).count();
  }

  @Test
  void files_plainAndPacked_giveTheRecordsBack(@TempDir Path folder) throws IOException {
    Path plain = folder.resolve("games.jsonl");
    Path packed = folder.resolve("games.jsonl.gz");
    List<GameRecord> some = games.subList(0, 30);
    List<String> lines = some.stream().map(RecordJson::line).toList();
    Files.write(plain, lines, StandardCharsets.UTF_8);
    try (BufferedWriter writer =
        new BufferedWriter(
            new OutputStreamWriter(
                new GZIPOutputStream(Files.newOutputStream(packed)), StandardCharsets.UTF_8))) {
      for (String line : lines) {
        writer.write(line + "\n\n");
      }
    }
    assertThat(all(plain)).isEqualTo(some);
    assertThat(all(packed)).as("empty lines are passed over").isEqualTo(some);
  }

  private static List<GameRecord> all(Path file) throws IOException {
    List<GameRecord> all = new ArrayList<>();
    try (RecordFile records = RecordFile.open(file)) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        all.add(game);
      }
    }
    return all;
  }
}
