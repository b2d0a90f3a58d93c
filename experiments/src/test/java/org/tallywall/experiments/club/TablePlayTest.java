package org.tallywall.experiments.club;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.rules.TableRules;
import org.tallywall.experiments.deals.RecordHeaders;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Games of four of a kind are counted right, and alike for any number of threads. */
class TablePlayTest {
  private static final int GAMES = 60;
  private static final long SEED = 9;
  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("cards/pebble-cove.json")).orThrow()),
          TableRules.STANDARD);

  private static PlayerSpec newcomer() {
    return new PlayerSpec(Catalog.standard().type("newcomer").orElseThrow(), Map.of());
  }

  private static long[] counts(int threads) {
    GameCells cells = new TablePlay(SETUP, SEED, GAMES, threads).play(newcomer());
    long[] counts = new long[cells.cells()];
    for (int cell = 0; cell < counts.length; cell++) {
      counts[cell] = cells.count(cell);
    }
    return counts;
  }

  @Test
  void play_withMoreThreads_isTheSame() {
    assertThat(counts(3)).isEqualTo(counts(1));
  }

  @Test
  void play_isWhatRecordsOfTheSameDealsHold() {
    GameCells cells = new TablePlay(SETUP, SEED, GAMES, 1).play(newcomer());
    long walls = 0;
    long discards = 0;
    for (int deal = 0; deal < GAMES; deal++) {
      GameRecorder recorder = new GameRecorder();
      PlayerSpec kind = newcomer();
      new Game(SETUP, List.of(kind.make(), kind.make(), kind.make(), kind.make()), recorder)
          .play(Deal.of(SEED, deal, SETUP.rules().tiles()));
      List<GameEvent.Mahjong> wins =
          recorder
              .record(RecordHeaders.of(SETUP, "", SEED, deal, List.of("", "", "", "")))
              .events()
              .stream()
              .filter(GameEvent.Mahjong.class::isInstance)
              .map(GameEvent.Mahjong.class::cast)
              .toList();
      walls += wins.isEmpty() ? 1 : 0;
      discards += wins.stream().filter(win -> win.from() >= 0).count();
    }
    assertThat(cells.games()).isEqualTo(GAMES);
    assertThat(cells.wallGames()).isEqualTo(walls);
    assertThat(cells.wins() - cells.selfPicked()).isEqualTo(discards);
  }
}
