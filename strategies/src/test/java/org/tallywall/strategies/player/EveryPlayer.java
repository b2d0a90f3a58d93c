package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tallywall.core.play.AimMoment;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.Replay;
import org.tallywall.core.rules.TableRules;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;

/** What every player of the catalog must do, on seeded deals by the rules of five tables. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class EveryPlayer {
  /** Games of which most are won where players try. */
  private static final int MANY = 100;

  private final int deals;
  private final int asked;
  private final int playedOut;
  private final int openTiles;

  /**
   * So many deals for most players, some of them with every question asked three times, fewer for
   * those that play games out, fewest for who sees all.
   */
  EveryPlayer(int deals, int asked, int playedOut, int openTiles) {
    this.deals = deals;
    this.asked = asked;
    this.playedOut = playedOut;
    this.openTiles = openTiles;
  }

  private static final String PLAYOUTS = "rollout.playouts";

  /** A player of the catalog, and for how many deals there is time. */
  private record Tried(PlayerSpec spec, int deals) {
    Supplier<Player> maker() {
      return spec::make;
    }

    String id() {
      return spec.type().id();
    }
  }

  Stream<Named<Tried>> players() {
    return Catalog.standard().types().stream()
        .map(type -> Named.of(type.id(), tried(new PlayerSpec(type, Map.of()))));
  }

  /** Players that play games out in their heads take long; they get fewer deals and playouts. */
  private Tried tried(PlayerSpec spec) {
    if (spec.type().seesEverything()) {
      return new Tried(spec, openTiles);
    }
    boolean rollout = spec.type().settings().stream().anyMatch(s -> s.name().equals(PLAYOUTS));
    return rollout
        ? new Tried(spec.with(PLAYOUTS, BigDecimal.valueOf(8)), playedOut)
        : new Tried(spec, deals);
  }

  /** In every other deal two of the seats play by lot, so that odd positions come up as well. */
  private static Player seat(Supplier<Player> maker, int deal, int seat) {
    return deal % 2 == 1 && (deal / 2 + seat) % 2 == 0 ? new RandomLegalPlayer() : maker.get();
  }

  private static GameRecord play(Supplier<Player> maker, int deal) {
    return TestTable.play(
        deal, IntStream.range(0, 4).mapToObj(seat -> seat(maker, deal, seat)).toList());
  }

  /** The game takes no other answer; of every third its record is checked by other code as well. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("players")
  void answers_areLegalAlways(Tried tried) {
    for (int deal = 0; deal < tried.deals(); deal++) {
      GameRecord game = play(tried.maker(), deal);
      if (deal % 3 == 0) {
        assertThat(Replay.check(TestTable.HANDS, game)).as("deal %d", deal).isEmpty();
      }
    }
  }

  /**
   * Asked again with the same numbers, and asked in mid-game as a new player, it answers the same,
   * and being asked so leaves the game as it is.
   */
  @ParameterizedTest(name = "{0}")
  @MethodSource("players")
  void answers_dependOnTheViewAndTheNumbersAlone(Tried tried) {
    List<ThreeTimesAsked> seats = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      seats.add(new ThreeTimesAsked(TestTable.SEED, tried.maker()));
    }
    int games = Math.min(asked, tried.deals());
    for (int deal = 0; deal < games; deal++) {
      GameRecord game = playAsking(seats, deal);
      assertThat(game).as("deal %d", deal).isEqualTo(play(tried.maker(), deal));
    }
    assertThat(seats).allSatisfy(seat -> assertThat(seat.questions).isGreaterThan(4L * games));
  }

  private static GameRecord playAsking(List<ThreeTimesAsked> seats, int deal) {
    return TestTable.play(
        deal,
        IntStream.range(0, 4)
            .mapToObj(
                seat -> {
                  seats.get(seat).deal(deal);
                  return seat(() -> seats.get(seat), deal, seat);
                })
            .toList());
  }

  /** Asked at every discard of whole games: the same from one made for the question alone. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("players")
  void aim_isALineOfTheCardOrNone(Tried tried) {
    for (int deal = 0; deal < Math.min(50, Math.min(asked, tried.deals())); deal++) {
      Aims aims = new Aims();
      TableRules rules = TestTable.rulesOf(deal);
      List<ThreeTimesAsked> seats =
          Stream.generate(() -> new ThreeTimesAsked(TestTable.SEED, tried.maker()))
              .limit(4)
              .toList();
      int number = deal;
      seats.forEach(seat -> seat.deal(number));
      new Game(new TableSetup(TestTable.HANDS, rules), seats, aims)
          .play(Deal.of(TestTable.SEED, deal, rules.tiles()));
      assertThat(aims.heard).hasSizeGreaterThan(7);
      for (int line : aims.heard) {
        assertThat(line).isBetween(Player.NO_AIM, TestTable.HANDS.lines() - 1);
      }
    }
  }

  /** Hears what players aim at. */
  private static final class Aims implements GameListener {
    private final List<Integer> heard = new ArrayList<>();

    @Override
    public boolean wantsAims() {
      return true;
    }

    @Override
    public void aimed(int seat, AimMoment moment, int line) {
      heard.add(line);
    }
  }

  /** Four alike, or one at a table of the nearest, since four that see all let nobody win. */
  private static List<Player> four(Tried tried, boolean alike) {
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      players.add(alike || seat == 0 ? tried.maker().get() : new NearestPlayer());
    }
    return players;
  }

  /** By the usual rules; whoever judges racks wins often on this card, the lot hardly ever. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("players")
  void games_areWonByThoseThatTry(Tried tried) {
    int won = 0;
    int games = Math.min(MANY, tried.deals());
    for (int deal = 0; deal < games; deal++) {
      int usual = TestTable.rules().size() * deal;
      GameRecord game = TestTable.play(usual, four(tried, games == MANY));
      won += game.end().win() == null ? 0 : 1;
    }
    if (tried.id().equals("random-legal")) {
      assertThat(won).isLessThan(5);
    } else if (games == MANY) {
      assertThat(won).isGreaterThan(40);
    } else if (tried.deals() > 1) {
      assertThat(won).isPositive();
    }
  }
}
