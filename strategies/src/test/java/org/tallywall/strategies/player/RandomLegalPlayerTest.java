package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;

/**
 * Whether the player by lot chooses evenly.
 *
 * <p>Hypothesis of each even test: all legal choices are equally likely. n = 30,000 questions,
 * seeds fixed; Pearson's sum is chi-square, critical value at 1e-6 from Commons Math 3.6.1, so one
 * fresh seed in a million would raise a false alarm.
 */
class RandomLegalPlayerTest {
  private static final int N = 30_000;
  private static final ConcreteHands HANDS =
      TestTable.card(
          "{ \"id\": \"A\", \"tiles\": \"111b 333b 5555c 7777c\", \"value\": 25 },"
              + "{ \"id\": \"B\", \"tiles\": \"1111b 333b 5555c 777c\", \"value\": 25 }");

  private final RandomLegalPlayer player = new RandomLegalPlayer();

  private Map<String, Integer> count(Function<RandomStream, Object> question) {
    Map<String, Integer> counts = new TreeMap<>();
    for (int at = 0; at < N; at++) {
      RandomStream random = new RandomStream(new StreamKey(77, at, Purpose.DECISION, 1, 0, 0));
      counts.merge(String.valueOf(question.apply(random)), 1, Integer::sum);
    }
    return counts;
  }

  private static void even(Map<String, Integer> counts, int cells, double critical) {
    assertThat(counts).hasSize(cells);
    double expected = N / (double) cells;
    double sum = 0;
    for (int count : counts.values()) {
      sum += (count - expected) * (count - expected) / expected;
    }
    assertThat(sum).isLessThan(critical);
  }

  /** Six kinds on the rack and one exchange: seven choices, df = 6, critical 38.258. */
  @Test
  void turn_isAnyLegalMoveAlike() {
    SeatView view = new HandMadeView(HANDS, "11b 33b 555c 77c W J").exposed(3, "WWWJ");
    Map<String, Integer> counts = count(random -> player.turn(view, random));
    even(counts, 7, 38.258);
    assertThat(counts).containsKey(String.valueOf(TurnChoice.exchange(3, 0)));
  }

  /** A pung with 0 to 2 jokers, a kong with one or two, or nothing: df = 5, critical 35.888. */
  @Test
  void claim_isAnyLegalChoiceAlike() {
    SeatView view = new HandMadeView(HANDS, "11b JJ 333b 55c NESW").offered("1b");
    Map<String, Integer> counts = count(random -> player.claim(view, random));
    even(counts, 6, 35.888);
    assertThat(counts)
        .containsOnlyKeys(
            String.valueOf(ClaimChoice.nothing()),
            String.valueOf(ClaimChoice.expose(3, 0)),
            String.valueOf(ClaimChoice.expose(3, 1)),
            String.valueOf(ClaimChoice.expose(3, 2)),
            String.valueOf(ClaimChoice.expose(4, 1)),
            String.valueOf(ClaimChoice.expose(4, 2)));
  }

  /** Four kinds once each to pass three of, jokers never: four passes, df = 3, critical 30.665. */
  @Test
  void pass_isAnyThreeTilesAlikeButNoJoker() {
    SeatView view = new HandMadeView(HANDS, "1b 2c 3d N JJJJJJJJ");
    Map<String, Integer> counts = count(random -> player.pass(view, PassStep.RIGHT_1, random));
    even(counts, 4, 30.665);
  }

  /** 0 to 3 tiles blind, each as often: df = 3, critical 30.665. */
  @Test
  void pass_whereBlindPassingIsAllowed_drawsTheNumberEvenly() {
    SeatView view = new HandMadeView(HANDS, "1b 2c 3d N");
    even(count(random -> player.pass(view, PassStep.LEFT_1, random).blind()), 4, 30.665);
  }

  /** Courtesy numbers: df = 3, critical 30.665; stops and declarations: df = 1, 23.928. */
  @Test
  void otherQuestions_areDrawnEvenly() {
    SeatView view = new HandMadeView(HANDS, "1b 2c 3d N");
    even(count(random -> player.courtesyNumber(view, random)), 4, 30.665);
    even(count(random -> player.stops(view, random)), 2, 23.928);
    even(count(random -> player.declares(view, random)), 2, 23.928);
    assertThat(player.aim(view)).isEqualTo(Player.NO_AIM);
  }

  /**
   * The chance that three tiles passed by lot hold at least one of m that South wants is 1 − C(N −
   * m, 3)/C(N, 3) with N = 131 + j unseen tiles that may be passed, where j are South's jokers.
   * Hypothesis: that is the law of what East passes South. Wanted: 5b 5c 5d N; n = 20,000 deals,
   * seed fixed; the sum of hits less the sum of chances within 4.8916 standard errors (normal,
   * two-sided 1e-6).
   */
  @Test
  void randomPass_b7_bringsWantedTilesAsOftenAsExpected() {
    List<Player> players =
        List.of(
            new RandomLegalPlayer(),
            new RandomLegalPlayer(),
            new RandomLegalPlayer(),
            new RandomLegalPlayer());
    Passes passes = new Passes();
    Game game = new Game(new TableSetup(HANDS, TableRules.STANDARD), players, passes);
    for (int deal = 0; deal < 20_000; deal++) {
      try {
        game.play(Deal.of(707, deal, TileSet.USUAL));
      } catch (Passes.Enough seen) {
        assertThat(passes.deals).isEqualTo(deal + 1);
      }
    }
    assertThat(passes.chances).isGreaterThan(1000);
    assertThat(Math.abs(passes.hits - passes.chances))
        .isLessThan(4.8916 * Math.sqrt(passes.variance));
  }

  /** Looks at what East passes to South, and leaves the game. */
  private static final class Passes implements GameListener {
    private static final int[] WANTED = {
      Tile.suited(0, 5), Tile.suited(1, 5), Tile.suited(2, 5), Tile.NORTH
    };

    private SeatView south;
    private int wanted;
    private int unseen;
    private int deals;
    private int hits;
    private double chances;
    private double variance;

    private static final class Enough extends RuntimeException {
      private static final long serialVersionUID = 1L;
    }

    @Override
    public void began(OpenTable table) {
      south = table.view(1);
      wanted = 0;
      for (int kind : WANTED) {
        wanted += 4 - south.held(kind);
      }
      unseen = 131 + south.held(Tile.JOKER);
    }

    @Override
    public void passed(PassStep step, int from, int[] own, int[] forwarded) {
      deals++;
      double none = 1;
      for (int tile = 0; tile < 3; tile++) {
        none *= (unseen - wanted - tile) / (double) (unseen - tile);
      }
      chances += 1 - none;
      variance += none * (1 - none);
      boolean hit = false;
      for (int tile : own) {
        for (int kind : WANTED) {
          hit |= tile == kind;
        }
      }
      hits += hit ? 1 : 0;
      throw new Enough();
    }
  }
}
