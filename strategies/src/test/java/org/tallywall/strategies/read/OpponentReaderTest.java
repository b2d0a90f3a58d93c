package org.tallywall.strategies.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileText;
import org.tallywall.strategies.HandMadeView;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.habit.OverlookHabit;
import org.tallywall.strategies.player.NearestPlayer;
import org.tallywall.strategies.player.NewcomerPlayer;
import org.tallywall.strategies.player.RandomLegalPlayer;
import org.tallywall.strategies.setting.SettingValues;

/**
 * The reading of opponents, against plain code, in positions of real games.
 *
 * <p>Of the lines that the profile {@code mutants} breaks in this package these survive, since they
 * change nothing. Bounds: {@code kind < NATURALS} with the joker let in, in {@code cost}, {@code
 * hers}, {@code exposureOnly} and {@code surelyWanted} (no hand wants a joker, and its chance is
 * 0); {@code chance > 0} (adds 0); {@code live() > 0} (where no hand is live none wants a tile);
 * {@code wanted > 1 - 1e-9} (no sum lies on it). In {@code LiveHands}: clearing what {@code look}
 * has cleared; holding nothing with a meter that never held anything; the share in {@code
 * wantedNatural}, of which only the sign is asked. In {@code Evidence}: counting blind tiles though
 * they weigh 0. In {@code WallColumns}: the first column, where the straight line begins.
 */
@Tag("one-jdk")
class OpponentReaderTest {
  private static final double CLOSE = 1e-12;

  private static final List<ReadSettings> SETTINGS =
      List.of(
          ReadSettings.USUAL,
          new ReadSettings(true, true, true, 0.25),
          new ReadSettings(false, true, true, 0),
          new ReadSettings(true, false, true, 0),
          new ReadSettings(true, true, false, 0),
          new ReadSettings(true, false, false, 1),
          new ReadSettings(true, true, true, 0, true));

  /** A seat whose readers look whenever it throws, kept through all games. */
  private static final class Reading implements Player {
    private final Player player;
    private final List<OpponentReader> readers =
        SETTINGS.stream().map(OpponentReader::new).toList();
    private int positions;
    private int inPairAndGroup;
    private int courtesies;
    private int noneLeft;

    Reading(Player player) {
      this.player = player;
    }

    private void read(SeatView view) {
      int which = positions++ % SETTINGS.size();
      OpponentReader reader = readers.get(which);
      reader.look(view);
      PlainReading plain = new PlainReading(view, SETTINGS.get(which));
      for (int other = 0; other < 4; other++) {
        assertThat(reader.live(other)).isEqualTo(plain.live(other));
        assertThat(reader.lines(other)).isEqualTo((int) plain.lines(other));
        noneLeft += plain.isRead(other) && plain.live(other) == 0 ? 1 : 0;
        inPairAndGroup += plain.wantsInPairAndGroup(other) ? 1 : 0;
      }
      assertThat(OpponentReader.mostExposures(view)).isEqualTo(plain.mostExposures());
      courtesies += (int) view.passes().stream().filter(pass -> pass.step() == null).count();
      for (int kind = 0; kind < Tile.NATURALS; kind++) {
        chances(reader, plain, kind);
        verdicts(reader, plain, kind);
      }
    }

    private static void chances(OpponentReader reader, PlainReading plain, int kind) {
      for (int other = 0; other < 4; other++) {
        assertThat(reader.winChance(other, kind)).isCloseTo(plain.win(other, kind), within(CLOSE));
        assertThat(reader.claimChance(other, kind))
            .isCloseTo(plain.claim(other, kind), within(CLOSE));
      }
      assertThat(reader.given(kind)).isCloseTo(plain.given(kind), within(CLOSE));
      for (double weight : new double[] {0, 0.5, 1}) {
        assertThat(reader.cost(kind, weight, 12.5, 3))
            .isCloseTo(plain.cost(kind, weight, 12.5, 3), within(CLOSE * 100));
        assertThat(reader.cost(kind, weight, 0, 0))
            .isCloseTo(plain.cost(kind, weight, 0, 0), within(CLOSE * 100));
      }
    }

    private static void verdicts(OpponentReader reader, PlainReading plain, int kind) {
      for (int exposures = 1; exposures <= 4; exposures++) {
        assertThat(reader.hers(kind, exposures, 0)).isEqualTo(plain.hers(kind, exposures, 0));
        assertThat(reader.hers(kind, exposures, 0.25)).isEqualTo(plain.hers(kind, exposures, 0.25));
        assertThat(reader.exposureOnly(kind, exposures))
            .isEqualTo(plain.exposureOnly(kind, exposures));
      }
      assertThat(reader.surelyWanted(kind)).isEqualTo(plain.surelyWanted(kind));
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return player.declares(view, random);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return player.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return player.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return player.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return player.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return player.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      read(view);
      return player.turn(view, random);
    }
  }

  private static Player newcomer() {
    return new NewcomerPlayer(SettingValues.standard(OverlookHabit.settings()));
  }

  @Test
  void joker_isNobodysAndRisksNothing() {
    HandMadeView view = new HandMadeView(TestTable.HANDS, "123456789b 1234c J").exposed(0, "NNNN");
    OpponentReader reader = new OpponentReader();
    reader.look(view);
    for (int other = 0; other < 4; other++) {
      assertThat(reader.winChance(other, Tile.JOKER)).isZero();
      assertThat(reader.claimChance(other, Tile.JOKER)).isZero();
    }
    assertThat(reader.winChance(0, Tile.SOUTH)).isPositive();
    assertThat(reader.cost(Tile.JOKER, 1, 10, 10)).isZero();
    assertThat(reader.hers(Tile.JOKER, 1, 0)).isFalse();
    assertThat(reader.exposureOnly(Tile.JOKER, 1)).isTrue();
    assertThat(reader.surelyWanted(Tile.JOKER)).isFalse();
  }

  @Test
  void tileIsHers_whereAllHandsWantItAndAllMust() {
    HandMadeView view =
        new HandMadeView(
                TestTable.card("{ \"tiles\": \"NNNN EEE WWW SSSS\", \"value\": 25 }"),
                "123456789b 1234c")
            .exposed(0, "NNNN");
    OpponentReader reader = new OpponentReader();
    reader.look(view);
    assertThat(reader.hers(Tile.SOUTH, 1, 1)).isTrue();
    assertThat(reader.hers(Tile.NORTH, 1, 0)).isFalse();
  }

  /** South reads East, who shows three groups of winds and may hold two tiles or three besides. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NNNN EEE SSSS | W | true  | two tiles, and all hands want W",
        "NNNN EEE SSSS | S | false | no hand wants S",
        "NNNN EEE WWW  | S | false | three tiles, so that one may serve for another",
        "NNNN SSSS     | W | false | two groups only",
      })
  void tileIsSurelyWanted_whereThreeGroupsLeaveNothingElse(
      String shown, String tile, boolean wanted, String why) {
    HandMadeView view =
        new HandMadeView(
                TestTable.card("{ \"tiles\": \"NNNN EEE WWW SSSS\", \"value\": 25 }"),
                "123456789b 1234c")
            .exposed(0, shown);
    OpponentReader reader = new OpponentReader();
    reader.look(view);
    assertThat(reader.surelyWanted(TileText.tile(tile))).as(why).isEqualTo(wanted);
  }

  /**
   * South reads East: a tile for a single or a pair may end the game, and so may any after three.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "NNNN EEE      | 1 | W | true  | two groups, and W makes a third",
        "NNNN EEE WWWW | 1 | R | false | three groups, and R may be the last tile",
        "NNNN EEE RRR  | 1 | W | false | three groups, and W may make the last",
        "NNNN EEE RRR  | 4 | W | true  | nobody is feared",
        "NNNN EEE      | 1 | 0 | false | two groups, and a hand that wants a pair of soaps",
        "NNNN EEE      | 1 | S | true  | no hand wants S",
      })
  void tileGivesAnExposureOnly_whereNobodyCanWinOnIt(
      String shown, int exposures, String tile, boolean only, String why) {
    HandMadeView view =
        new HandMadeView(
                TestTable.card(
                    "{ \"tiles\": \"NNNN EEE WWWW RRR\", \"value\": 25 }",
                    "{ \"tiles\": \"NNNN EEE RR GGG 00\", \"value\": 25 }",
                    "{ \"tiles\": \"NNNN EEE WWWW GG R\", \"value\": 25 }"),
                "123456789b 1234c")
            .exposed(0, shown);
    OpponentReader reader = new OpponentReader();
    reader.look(view);
    assertThat(reader.exposureOnly(TileText.tile(tile), exposures)).as(why).isEqualTo(only);
  }

  private static List<Reading> play(int deals, ConcreteHands hands) {
    return play(deals, hands, TestTable.rules());
  }

  private static List<Reading> play(int deals, ConcreteHands hands, List<TableRules> tables) {
    List<Reading> seats = new ArrayList<>();
    for (Player player :
        List.of(newcomer(), new NearestPlayer(), newcomer(), new RandomLegalPlayer())) {
      seats.add(new Reading(player));
    }
    for (int deal = 0; deal < deals; deal++) {
      TableRules rules = tables.get(deal % tables.size());
      new Game(new TableSetup(hands, rules), seats, GameListener.NONE)
          .play(Deal.of(TestTable.SEED, deal, rules.tiles()));
    }
    return seats;
  }

  private static int sum(List<Reading> seats, ToIntFunction<Reading> count) {
    return seats.stream().mapToInt(count).sum();
  }

  /** The counts say that the games have what is rare: courtesies, hands of which none is left. */
  @Test
  void reading_isThatOfPlainCode() {
    List<Reading> seats = play(20, TestTable.HANDS);
    assertThat(sum(seats, seat -> seat.positions)).isGreaterThan(1500);
    assertThat(sum(seats, seat -> seat.courtesies)).isGreaterThan(100);
    assertThat(sum(seats, seat -> seat.noneLeft)).isPositive();
  }

  /** What a throw costs is by the payments of the table: no other number of the reader is. */
  @Test
  void reading_isThatOfPlainCode_whateverIsPaid() {
    List<TableRules> tables =
        List.of(
            TableRules.of(Map.of("score.discarder", 4, "score.othersOnDiscard", 0)),
            TableRules.of(Map.of("score.oneHandRule", true)),
            TableRules.of(Map.of("score.discarder", 1, "score.selfDrawn", 1)),
            TableRules.of(Map.of("score.wallGame", 30)),
            TableRules.of(Map.of("score.wallGame", -20, "score.jokerless", 1)));
    List<Reading> seats = play(20, TestTable.HANDS, tables);
    assertThat(sum(seats, seat -> seat.positions)).isGreaterThan(1500);
  }

  /** Hands that want a kind for a pair and for a group, flowers and four of a suit. */
  @Test
  void reading_isThatOfPlainCode_whereAKindStandsInAPairAndInAGroup() {
    List<Reading> seats =
        play(
            10,
            TestTable.card(
                "{ \"tiles\": \"FF 222x 444y 666z FFF\", \"value\": 25 }",
                "{ \"tiles\": \"F 1111x 333x 55y FFFF\", \"slide\": \"any\", \"value\": 40 }",
                "{ \"tiles\": \"11x 111x 2222x 333x FF\", \"slide\": \"any\", \"value\": 50 }",
                "{ \"tiles\": \"FF NNNN SSSS FFFF\", \"value\": 30 }"));
    assertThat(sum(seats, seat -> seat.inPairAndGroup)).isGreaterThan(500);
  }
}
