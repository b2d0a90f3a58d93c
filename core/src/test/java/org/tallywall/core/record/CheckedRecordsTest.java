package org.tallywall.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tallywall.core.play.MixedTable;
import org.tallywall.core.play.StackedGame;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.text.FaultyFileException;

/** Games come from a file only as the rules and their seed allow them. */
class CheckedRecordsTest {
  private static final GameRecord GAME = Records.play(TableRules.STANDARD, 5, 5);

  @TempDir Path folder;

  private int read(GameRecord... games) throws IOException {
    Path file = folder.resolve("games.jsonl");
    Files.write(file, java.util.Arrays.stream(games).map(RecordJson::line).toList());
    int read = 0;
    try (CheckedRecords records = CheckedRecords.open(file, Records.HANDS)) {
      for (GameRecord game = records.next(); game != null; game = records.next()) {
        assertThat(game).isEqualTo(games[read++]);
      }
    }
    return read;
  }

  private String refused(GameRecord... games) {
    return catchThrowableOfType(FaultyFileException.class, () -> read(games)).getMessage();
  }

  private static GameRecord withHeader(GameRecord game, long seed, long deal) {
    GameRecord.Header h = game.header();
    return new GameRecord(
        new GameRecord.Header(
            h.study(), seed, h.game(), deal, h.arm(), h.seat(), h.card(), h.rules(), h.players()),
        game.wall(),
        game.dice(),
        game.events(),
        game.end());
  }

  @Test
  void games_byTheRulesAndTheirSeed_comeOut() throws IOException {
    assertThat(read(GAME, Records.play(TableRules.STANDARD, 6, 0), GAME)).isEqualTo(3);
  }

  /** Each table has other tiles, or other rules about dice. */
  @Test
  void games_ofEveryTable_haveTheWallOfTheirSeed() {
    List<TableRules> rules = MixedTable.rules();
    for (int deal = 0; deal < 60; deal++) {
      GameRecord game = Records.play(rules.get(deal % rules.size()), deal, deal);
      assertThat(Replay.checkDealt(Records.HANDS, game)).isEmpty();
      assertThat(Replay.checkDealt(Records.HANDS, withHeader(game, Records.SEED + 1, deal)))
          .isPresent();
    }
  }

  @Test
  void game_ofAnotherSeedOrDeal_isRefusedWithItsLine() {
    assertThat(refused(GAME, withHeader(GAME, Records.SEED + 1, 5)))
        .startsWith(
            folder.resolve("games.jsonl") + " game line 2: game 5 (deal 5) breaks the rules:")
        .contains("with seed 40405, deal 5, tile 1 of the wall is");
    assertThat(refused(withHeader(GAME, Records.SEED, 6)))
        .contains("with seed 40404, deal 6, tile");
  }

  /** Tiles that nobody drew can be exchanged without a rule being broken. */
  @Test
  void game_whoseUndrawnTilesWereExchanged_isRefused() {
    GameRecord game = Records.find(TableRules.STANDARD, g -> g.end().wall() > 20);
    int last = game.wall().size() - 1;
    int other = last;
    while (game.wall().get(other).equals(game.wall().get(last))) {
      other--;
    }
    int exchanged = other;
    GameRecord altered =
        Records.wall(
            game,
            wall -> {
              Collections.swap(wall, last, exchanged);
              return wall;
            });
    assertThat(Replay.check(Records.HANDS, altered)).isEmpty();
    assertThat(Replay.checkDealt(Records.HANDS, altered))
        .get()
        .extracting(Breach::event)
        .isEqualTo(-1);
    assertThat(refused(altered)).contains("of the wall is");
  }

  @Test
  void game_withOtherDice_isRefused() {
    Integer first = GAME.dice().get(0);
    GameRecord altered = Records.dice(GAME, first % 6 + 1, GAME.dice().get(1));
    assertThat(refused(altered)).contains("the dice show " + GAME.dice());
  }

  @Test
  void game_againstTheRules_isRefusedWithTheEvent() {
    int draw = Records.index(GAME, GameEvent.Draw.class, any -> true);
    assertThat(refused(Records.without(GAME, draw)))
        .contains(", event " + draw + " breaks the rules: ");
  }

  /** A wall set up by hand breaks no rule, but no seed gives it. */
  @Test
  void stackedGame_isByTheRulesButNotDealt() {
    StackedGame game = StackedGame.play();
    game.rack(0, "7d").rack(1, "77d J 4c").rack(2, "11b 7d 444c NNNN RRR");
    game.seat(0).discard("7d");
    game.run();
    GameRecord record = game.record();
    assertThat(Replay.check(game.hands(), record)).isEmpty();
    Optional<Breach> breach = Replay.checkDealt(game.hands(), record);
    assertThat(breach).isPresent();
  }

  @Test
  void breach_withTextOfTheRecord_isShownVisibly() {
    GameRecord.Header h = GAME.header();
    GameRecord other =
        new GameRecord(
            new GameRecord.Header(
                h.study(),
                h.seed(),
                h.game(),
                h.deal(),
                h.arm(),
                h.seat(),
                new GameRecord.CardName("Quay", "\u001b[2J" + "x".repeat(1_000_000)),
                h.rules(),
                h.players()),
            GAME.wall(),
            GAME.dice(),
            GAME.events(),
            GAME.end());
    assertThat(refused(other))
        .contains("on another card: \\u{1b}[2Jxxx")
        .endsWith("x…")
        .hasSizeLessThan(400);
  }
}
