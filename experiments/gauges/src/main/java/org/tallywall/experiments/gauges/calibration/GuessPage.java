package org.tallywall.experiments.gauges.calibration;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Seats;
import org.tallywall.experiments.gauges.MarkedPage;
import org.tallywall.experiments.gauges.Paragraph;
import org.tallywall.experiments.gauges.guess.SeenPositions;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.guess.LikelyTiles;
import org.tallywall.strategies.guess.WeighedTiles;

/**
 * Plays games and writes what {@code strategies/CALIBRATION.md} says of guessed tiles: how often
 * what the guesses say of opponents is true. The same numbers give the same bytes.
 */
public final class GuessPage {
  private static final int EVERY = 41;
  private static final List<String> KINDS = List.of("reckoner", "watchful", "nearest", "newcomer");

  private GuessPage() {}

  /**
   * Plays and writes.
   *
   * @param args the page, the seed, how many positions of each kind of player, how many worlds are
   *     guessed in each, and the files of two cards; on the second a fourth as many positions are
   *     taken
   * @throws IOException if the page or a card cannot be read, or the page not be written
   */
  public static void main(String[] args) throws IOException {
    MarkedPage marked = new MarkedPage(Path.of(args[0]), "guesses");
    long seed = Long.parseLong(args[1]);
    int positions = Integer.parseInt(args[2]);
    int worlds = Integer.parseInt(args[3]);
    List<GuessResult> results = new ArrayList<>();
    for (int card = 0; card < 2; card++) {
      ConcreteHands hands = CalibrationPage.card(Path.of(args[4 + card]));
      for (String kind : KINDS) {
        results.add(
            of(hands, kind, seed, card == 0 ? positions : Math.max(1, positions / 4), worlds));
        marked.write(text(results, seed, worlds));
      }
    }
  }

  private static GuessResult of(
      ConcreteHands card, String kind, long seed, int positions, int worlds) {
    PlayerSpec spec = new PlayerSpec(Catalog.standard().type(kind).orElseThrow(), Map.of());
    List<Supplier<Player>> players = Collections.nCopies(Seats.COUNT, spec::make);
    WeighedTiles weighed = new WeighedTiles(players, Collections.nCopies(Seats.COUNT, kind));
    GuessTally tally = new GuessTally(List.of(new LikelyTiles(), weighed), worlds);
    double[] effective = new double[2];
    SeenPositions seen = new SeenPositions(card, kind, seed, EVERY);
    for (int game = 0; tally.positions() < positions; game++) {
      seen.play(
          game,
          1,
          (view, racks, random) -> {
            tally.visit(view, racks, random);
            for (int seat = 0; seat < Seats.COUNT; seat++) {
              effective[0] += seat == view.seat() ? 0 : weighed.effective(seat);
              effective[1] += seat == view.seat() ? 0 : 1;
            }
          },
          tally::endGame);
    }
    return new GuessResult(card, kind, tally, effective[0] / effective[1]);
  }

  private static String text(List<GuessResult> results, long seed, int worlds) {
    StringBuilder page = new StringBuilder("## Guessed tiles\n\n");
    page.append(
        Paragraph.of(
            String.format(
                Locale.ROOT,
                "Whoever plays games out from a position guesses the tiles that a seat cannot see."
                    + " What %d such guesses say of each opponent, by their shares, beside what was"
                    + " true of her: `LikelyTiles` is the guess of `rollout`, `WeighedTiles` weighs"
                    + " racks by what was seen. Seed %d, games from deal 0 on, every %dth question"
                    + " in play. What the weights count for was fitted to other deals, on three"
                    + " cards; Kite Hill is not among them. The tenth is found by half of the"
                    + " guesses, and what was said is the share of the other half, so that chance in"
                    + " the guesses is not taken for an error.",
                worlds,
                seed,
                EVERY)));
    page.append("### What it comes to\n\n");
    results.forEach(result -> result.net().forEach(line -> page.append(Paragraph.item(line))));
    page.append("\n### How well they fit\n\n").append(GuessTables.scores(results));
    for (GuessResult result : results) {
      page.append("### ").append(result.title()).append("\n\n");
      for (GuessTally.Fact fact : GuessTally.Fact.values()) {
        page.append(GuessTables.bins(result, fact));
      }
    }
    return page.toString().replace("\r", "");
  }
}
