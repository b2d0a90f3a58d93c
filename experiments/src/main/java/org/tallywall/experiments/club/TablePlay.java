package org.tallywall.experiments.club;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.tallywall.core.card.Family;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Outcome;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.WinBy;
import org.tallywall.strategies.catalog.PlayerSpec;

/** Plays games of four players of one kind; what comes out depends on seed and number alone. */
public final class TablePlay {
  private final TableSetup setup;
  private final long seed;
  private final int games;
  private final int threads;

  /**
   * Play to come.
   *
   * @param setup card and rules
   * @param seed of the deals, which every table meets alike
   * @param games games of each table, 1 or more
   * @param threads how many play at a time, 1 or more
   */
  public TablePlay(TableSetup setup, long seed, int games, int threads) {
    this.setup = setup;
    this.seed = seed;
    this.games = games;
    this.threads = threads;
  }

  /** The games of one kind of player; sums of whole numbers, so their order does not matter. */
  GameCells play(PlayerSpec kind) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, TablePlay::daemon);
    try {
      List<Future<GameCells>> parts = new ArrayList<>();
      for (int thread = 0; thread < threads; thread++) {
        int first = thread;
        parts.add(pool.submit(() -> part(kind, first)));
      }
      GameCells all = new GameCells(families().size());
      for (Future<GameCells> part : parts) {
        all.add(part.get());
      }
      return all;
    } catch (ExecutionException thrown) {
      throw new IllegalStateException(
          "a table of " + kind.type().id() + " broke down", thrown.getCause());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while games were played", interrupted);
    } finally {
      pool.shutdownNow();
    }
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "club");
    thread.setDaemon(true);
    return thread;
  }

  private List<Family> families() {
    return setup.hands().card().families();
  }

  private GameCells part(PlayerSpec kind, int first) {
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(kind.make());
    }
    GameCells cells = new GameCells(families().size());
    Game game = new Game(setup, players, new Ends(cells));
    for (int deal = first; deal < games; deal += threads) {
      game.play(Deal.of(seed, deal, setup.rules().tiles()));
    }
    return cells;
  }

  /** Counts how games end. */
  private final class Ends implements GameListener {
    private final GameCells cells;
    private final Map<String, Integer> places = new HashMap<>();

    Ends(GameCells cells) {
      this.cells = cells;
      families().forEach(family -> places.put(family.name(), places.size()));
    }

    @Override
    public void ended(Outcome outcome) {
      Outcome.Win win = outcome.win();
      if (win == null) {
        cells.nobodyWon();
      } else {
        int family = places.get(setup.hands().line(win.line()).family());
        cells.won(family, win.by() != WinBy.DISCARD);
      }
    }
  }
}
