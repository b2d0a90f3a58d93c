package org.tallywall.experiments.gauges.review;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.sheet.Moment;
import org.tallywall.core.sheet.NotedPlayer;
import org.tallywall.core.sheet.SheetWriter;

/**
 * Positions drawn from simulated games: of each game one question at random among those that fit,
 * written down as a sheet, so that a game that asks much counts no more than another.
 */
final class FoundPositions {
  private final TableSetup setup;
  private final Supplier<Player> players;
  private final long seed;
  private final Predicate<Moment> fits;

  /**
   * Positions.
   *
   * @param setup the card and the rules
   * @param players make the four players
   * @param seed the seed of the deals, and of which question is drawn
   * @param fits which questions are looked for
   */
  FoundPositions(TableSetup setup, Supplier<Player> players, long seed, Predicate<Moment> fits) {
    this.setup = setup;
    this.players = players;
    this.seed = seed;
    this.fits = fits;
  }

  /**
   * The position of one game.
   *
   * @param deal the deal, from 0
   * @return the text of its sheet, or null where nothing fits
   */
  String of(long deal) {
    List<String> sheets = new ArrayList<>();
    List<Player> noted = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      noted.add(
          new NotedPlayer(
              players.get(),
              (view, moment, move) -> {
                if (fits.test(moment) && isAChoice(view, moment)) {
                  sheets.add(SheetWriter.text(view, moment));
                }
              }));
    }
    new Game(setup, noted, GameListener.NONE).play(Deal.of(seed, deal, setup.rules().tiles()));
    RandomStream lots = new RandomStream(new StreamKey(seed, deal, Purpose.RESAMPLING, 0, 0, 0));
    return sheets.isEmpty() ? null : sheets.get(lots.below(sheets.size()));
  }

  /** Whether there is anything to choose. */
  private static boolean isAChoice(SeatView view, Moment moment) {
    return !view.complete()
        && (!(moment instanceof Moment.Offer) || !LegalMoves.exposures(view).isEmpty());
  }
}
