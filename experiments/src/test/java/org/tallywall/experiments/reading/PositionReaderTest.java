package org.tallywall.experiments.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.Supplier;
import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.apache.commons.math3.util.FastMath;
import org.junit.jupiter.api.Test;
import org.tallywall.core.card.CardFile;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.LegalMoves;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.sheet.PositionSheet;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.guess.Guess;
import org.tallywall.strategies.guess.LikelyTiles;
import org.tallywall.strategies.player.NearestPlayer;
import org.tallywall.strategies.read.OpponentReader;

/** What is read off guesses, against exact counting and where nothing can be read. */
class PositionReaderTest {
  private static final TableSetup SETUP =
      new TableSetup(
          new ConcreteHands(CardFile.read(Path.of("scenes/heron-reach/card.json")).orThrow()),
          TableRules.STANDARD);

  /**
   * Seat 2 needs 111b alone and holds two tiles; two 1b and six jokers are among 30 unseen tiles.
   */
  private static final String ONE_LINE =
      "seat 0\nmoment turn\nrack 1b 22334c 556688d NE\nexposed 2 FFFF 4444b 777c\n"
          + "unseen 11b 567899b 1589999c 1234d WWWSSS0 JJJJJJ\n";

  private static SeatView view(String text) {
    return PositionSheet.of("typed", text.replace("\\\n", "\n"), SETUP).view();
  }

  /** Deals the unseen tiles at random. */
  private static final class AnyTiles implements Guess {
    @Override
    public void deal(SeatView view, RandomStream random, Position into) {
      Rack unseen = new Rack();
      for (int kind = 0; kind < Tile.KINDS; kind++) {
        unseen.add(kind, view.unseen(kind));
      }
      int[] tiles = unseen.tiles();
      random.shuffle(tiles, tiles.length);
      int at = 0;
      for (int seat = 1; seat < Seats.COUNT; seat++) {
        into.rack(seat).clear();
        while (into.rack(seat).total() < OpponentReader.concealed(view, seat)) {
          into.rack(seat).add(tiles[at++]);
        }
      }
      for (int left = 0; left < view.wallLeft(); left++) {
        into.wall(left, tiles[at++]);
      }
    }
  }

  private static List<Player> four(Supplier<Player> player) {
    return List.of(player.get(), player.get(), player.get(), player.get());
  }

  private static Reading read(String text, Guess guess, Draws draws) {
    return PositionReader.of(view(text), guess, four(NearestPlayer::new), draws);
  }

  private static TileReading tile(Reading reading, String tile) {
    int kind = TileText.rack(tile).tiles()[0];
    return reading.tiles().stream().filter(one -> one.kind() == kind).findFirst().orElseThrow();
  }

  private static OpponentReading seat(Reading reading, int seat) {
    return reading.opponents().stream().filter(one -> one.seat() == seat).findFirst().orElseThrow();
  }

  /**
   * Hypothesis: with tiles dealt at random, seat 2 wins on a 1b if both her tiles are among the
   * eight of 30 that fit 111b, which is hypergeometric: 28/435. Of these 28 pairs one holds no
   * joker and pays double. n = 20,000; the windows are 4.42 standard errors wide (normal table,
   * 1e-5 two sided), so a fresh seed fails one of three about once in 30,000.
   */
  @Test
  void oneOpponentWithOneLine_randomTiles_agreesWithExactCounting() {
    int n = 20_000;
    Reading reading = read(ONE_LINE, new AnyTiles(), new Draws(7, n, 100));
    double exact = new HypergeometricDistribution(30, 8, 2).probability(2);
    assertThat(exact).isCloseTo(28 / 435.0, within(1e-12));
    double window = 4.42 * FastMath.sqrt(exact * (1 - exact) / n);
    TileReading thrown = tile(reading, "1b");

    assertThat(thrown.winsOf().get(2) / (double) n).isCloseTo(exact, within(window));
    assertThat(seat(reading, 2).within(1) / (double) n).isCloseTo(exact, within(window));
    double mean = (100 + 27 * 50) / 28.0;
    double spread = 50 * FastMath.sqrt(27.0) / 28;
    assertThat(thrown.pays()).isCloseTo(mean, within(4.42 * spread / FastMath.sqrt(thrown.wins())));
    assertThat(List.of(thrown.least(), thrown.most())).containsExactly(50, 100);
  }

  @Test
  void oneOpponentWithOneLine_hasThatLineAndNeedsItsTile() {
    OpponentReading her = seat(read(ONE_LINE, new AnyTiles(), new Draws(7, 500, 1)), 2);

    assertThat(her.linesLeft()).hasSize(1);
    assertThat(her.makeable()).isEqualTo(1);
    assertThat(her.lines()).hasSize(1);
    assertThat(her.lines().get(0).chance()).isEqualTo(1.0);
    assertThat(her.needs()).hasSize(1);
    assertThat(her.needs().get(0).nearer()).isEqualTo(500);
    assertThat(her.away().stream().mapToInt(Integer::intValue).sum() + her.stuck()).isEqualTo(500);
  }

  /** With no tile to throw after it she can take a 1b to win only. */
  @Test
  void claims_areWhatTheSupposedPlayersDo() {
    Draws draws = new Draws(3, 300, 300);
    Reading silent =
        PositionReader.of(view(ONE_LINE), new AnyTiles(), four(() -> new Answering(false)), draws);
    Reading eager =
        PositionReader.of(view(ONE_LINE), new AnyTiles(), four(() -> new Answering(true)), draws);

    assertThat(silent.tiles()).allMatch(one -> one.claims() == 0 && one.tried() == 300);
    assertThat(eager.tiles()).anyMatch(one -> one.claims() > 100);
    assertThat(tile(eager, "1b").claimsOf().get(2)).isZero();
    assertThat(eager.tiles().stream().map(TileReading::wins))
        .containsExactlyElementsOf(silent.tiles().stream().map(TileReading::wins).toList());
  }

  /** Claims whatever may be laid open, or nothing. */
  private static final class Answering extends ForwardingPlayer {
    private final boolean eager;

    Answering(boolean eager) {
      super(new NearestPlayer());
      this.eager = eager;
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      List<ClaimChoice> all = LegalMoves.exposures(view);
      return eager && !all.isEmpty() ? all.get(0) : ClaimChoice.nothing();
    }
  }

  /**
   * Hypothesis: before anything is shown or thrown, to a rack that is alike in all suits, a number
   * is needed as often in one suit as in another, for the card is alike in all suits but for
   * dragons. Each suit is read with a seed of its own, 3,000 guesses, and the three counts of a
   * number compared: chi square, 2 degrees of freedom, critical value -2 ln(1e-5) = 23.03, which is
   * exact for 2 degrees. Of nine numbers one fails by chance about once in 11,000 seeds.
   */
  @Test
  void nothingShownOrThrown_equalKindsAreEquallyNeeded() {
    String start = "seat 0\nmoment turn\nwall 99\nrack 1234b 1234c 1234d NF\n";
    int guesses = 3_000;
    int[][] counts = new int[3][9];
    for (int suit = 0; suit < 3; suit++) {
      Reading reading = read(start, new LikelyTiles(), new Draws(100 + suit, guesses, 1));
      for (OpponentReading.Need need : seat(reading, 1).needs()) {
        if (Tile.isSuited(need.kind()) && Tile.suitOf(need.kind()) == suit) {
          counts[suit][Tile.numberOf(need.kind()) - 1] = need.nearer();
        }
      }
    }
    for (int number = 0; number < 9; number++) {
      double share = (counts[0][number] + counts[1][number] + counts[2][number]) / (3.0 * guesses);
      double square = 0;
      for (int suit = 0; suit < 3; suit++) {
        double off = counts[suit][number] - guesses * share;
        square += off * off / (guesses * share * (1 - share));
      }
      assertThat(share).isGreaterThan(0.01);
      assertThat(square).as("number " + (number + 1)).isLessThan(23.03);
    }
  }

  @Test
  void sameDraws_sameReading() {
    Draws draws = new Draws(5, 200, 50);
    Reading one = read(ONE_LINE, new LikelyTiles(), draws);
    Reading two = read(ONE_LINE, new LikelyTiles(), draws);
    Reading other = read(ONE_LINE, new LikelyTiles(), new Draws(6, 200, 50));

    assertThat(two.tiles()).isEqualTo(one.tiles());
    assertThat(two.opponents()).isEqualTo(one.opponents());
    assertThat(other.opponents()).isNotEqualTo(one.opponents());
    assertThat(Collections.max(one.tiles().stream().map(TileReading::wins).toList())).isPositive();
  }
}
