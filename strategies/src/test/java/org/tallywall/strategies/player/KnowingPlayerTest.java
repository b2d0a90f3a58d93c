package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TrialDiscard;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.Replay;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.catalog.PlayerType;
import org.tallywall.strategies.habit.KnowsHabit;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

/** Players that know more than their seat: what they know, what they do with it, and the mark. */
class KnowingPlayerTest {
  private static final String NEVER = "knows.never-the-winning-tile";

  private static PlayerSpec spec(String id, Object... settings) {
    Map<String, Object> changed = new LinkedHashMap<>();
    for (int at = 0; at < settings.length; at += 2) {
      Object value = settings[at + 1];
      changed.put(
          (String) settings[at],
          value instanceof Integer whole ? BigDecimal.valueOf(whole) : value);
    }
    return new PlayerSpec(Catalog.standard().find(id), changed);
  }

  /** A knowing player in one seat, whose every discard is looked at before it is thrown. */
  private static final class Watched extends ForwardingPlayer implements SeesOpenTable {
    final List<Thrown> thrown = new ArrayList<>();
    private OpenTable table;
    private TrialDiscard trial;

    Watched(PlayerSpec spec) {
      super(spec.make());
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
      trial = null;
      show(open);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      TurnChoice choice = super.turn(view, random);
      if (choice instanceof TurnChoice.Discard discard) {
        thrown.add(look(view, random, discard.tile()));
      }
      return choice;
    }

    /**
     * The tile is thrown at a table of its own, and where somebody wins on it, so are the others.
     */
    private Thrown look(SeatView view, RandomStream random, int tile) {
      if (trial == null) {
        List<Player> nobody = Collections.nCopies(Seats.COUNT, new NearestPlayer());
        trial = new TrialDiscard(view.table(), nobody);
      }
      Position position = new Position();
      position.begin(view, random);
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        table.view(seat).copyRack(position.rack(seat));
      }
      trial.throwNow(position, tile);
      int winners = trial.mayWin();
      int exposures = 0;
      for (int seat = 0; seat < Seats.COUNT; seat++) {
        boolean won = (winners >> seat & 1) != 0;
        exposures = won ? Math.max(exposures, view.exposures(seat).size()) : exposures;
      }
      boolean other = false;
      for (int kind = 0; kind < Tile.KINDS && winners != 0; kind++) {
        if (view.held(kind) > 0) {
          trial.throwNow(position, kind);
          other |= trial.mayWin() == 0;
        }
      }
      return new Thrown(winners != 0, other, exposures);
    }
  }

  /** Whether somebody may win on a discard, whether another tile was safe, and what she shows. */
  private record Thrown(boolean wins, boolean other, int exposures) {
    boolean needlessly() {
      return wins && other;
    }
  }

  /** All discards of a player in seat 2 at tables of reckoners, by rules without dice. */
  private static List<Thrown> thrown(PlayerSpec spec, int deals) {
    Watched watched = new Watched(spec);
    List<Player> four = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      four.add(seat == 2 ? watched : spec("reckoner").make());
    }
    for (int deal = 0; deal < deals; deal++) {
      GameRecord game = TestTable.play(deal, four);
      assertThat(Replay.check(TestTable.HANDS, game)).isEmpty();
    }
    return watched.thrown;
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful"})
  void neverTheWinningTile_isNeverThrownWhereAnotherIsHeld(String player) {
    long usually = thrown(spec(player), 40).stream().filter(Thrown::needlessly).count();
    List<Thrown> never = thrown(spec(player, NEVER, true), 40);

    assertThat(usually).as("without the setting").isGreaterThan(2);
    assertThat(never).hasSizeGreaterThan(200).noneMatch(Thrown::needlessly);
  }

  @Test
  void neverTheWinningTile_againstWhoShowsEnough_onlyThere() {
    List<Thrown> all = thrown(spec("reckoner", NEVER, true, NEVER + ".exposures-at-least", 2), 60);

    assertThat(all).noneMatch(one -> one.needlessly() && one.exposures() >= 2);
    assertThat(all).anyMatch(one -> one.needlessly() && one.exposures() < 2);
  }

  @Test
  void neverTheWinningTile_fromFarAway_notWhenNear() {
    List<Thrown> all = thrown(spec("reckoner", NEVER, true, NEVER + ".away-at-least", 14), 30);

    assertThat(all).anyMatch(Thrown::needlessly);
  }

  /** What wins costs, and what does not costs nothing, so the cheapest safe tile goes. */
  @ParameterizedTest
  @CsvSource({"knows.what-she-waits-for", "knows.racks"})
  void waitsKnown_farFewerWinningTilesAreThrown(String setting) {
    long usually = thrown(spec("reckoner"), 60).stream().filter(Thrown::needlessly).count();
    long known =
        thrown(spec("reckoner", setting, true), 60).stream().filter(Thrown::needlessly).count();

    assertThat(known).isLessThan(usually * 2 / 3);
  }

  @ParameterizedTest
  @ValueSource(strings = {"reckoner", "watchful", "custom"})
  void allOff_playsAsTheHabitsDo(String player) {
    Map<String, Object> off = new LinkedHashMap<>();
    for (Setting<?> setting : KnowsHabit.settings()) {
      off.put(setting.name(), setting.standard());
    }
    off.put("knows.risk-weight", BigDecimal.valueOf(3));
    PlayerSpec written = new PlayerSpec(Catalog.standard().find(player), off);
    boolean watchful = player.equals("watchful");
    SettingValues plain =
        SettingValues.standard(watchful ? HabitPlayer.watchful() : HabitPlayer.reckoner());

    assertThat(written.make()).isInstanceOf(HabitPlayer.class).isNotInstanceOf(SeesOpenTable.class);
    for (int deal = 0; deal < 20; deal++) {
      assertThat(TestTable.play(deal, four(written::make)))
          .isEqualTo(TestTable.play(deal, four(() -> new HabitPlayer(plain))));
    }
  }

  private static List<Player> four(Supplier<Player> maker) {
    return List.of(maker.get(), maker.get(), maker.get(), maker.get());
  }

  @Test
  void answers_legalAndByTheViewAlone_whateverIsKnown() {
    List<PlayerSpec> specs =
        List.of(
            spec("watchful", "knows.who-is-one-away", true, "knows.next-draws", 3),
            spec("bold", "knows.racks", true, NEVER, true),
            spec("reckoner", "knows.what-she-waits-for", true, "knows.next-draws", 2),
            spec("cautious", NEVER, true, "knows.racks", true, "knows.next-draws", 1));
    List<ThreeTimesAsked> seats =
        specs.stream().map(one -> new ThreeTimesAsked(TestTable.SEED, one::make)).toList();
    for (int deal = 0; deal < 10; deal++) {
      int number = deal;
      seats.forEach(seat -> seat.deal(number));
      assertThat(Replay.check(TestTable.HANDS, TestTable.play(deal, seats))).isEmpty();
    }
  }

  /** Where it tries others out, the one that it takes is not the winning tile either. */
  @Test
  void rollout_thatNeverThrowsTheWinningTile_triesNone() {
    PlayerSpec never =
        spec("rollout", "rollout.playouts", 12, "rollout.worth-at-least", 0, NEVER, true);

    assertThat(thrown(never, 12)).hasSizeGreaterThan(60).noneMatch(Thrown::needlessly);
  }

  @Test
  void rollout_withAllThatIsKnown_isLegal() {
    PlayerSpec known =
        spec(
            "rollout",
            "rollout.playouts",
            8,
            "knows.racks",
            true,
            "knows.next-draws",
            2,
            NEVER,
            true);
    PlayerSpec draws = spec("rollout", "rollout.playouts", 8, "knows.next-draws", 3);
    for (int deal = 0; deal < 6; deal++) {
      List<Player> four =
          List.of(known.make(), spec("reckoner").make(), draws.make(), spec("reckoner").make());
      assertThat(Replay.check(TestTable.HANDS, TestTable.play(deal, four))).isEmpty();
    }
  }

  /** Foretells at each turn what its seat draws, and compares with what it draws. */
  private static final class Foretelling extends ForwardingPlayer implements SeesOpenTable {
    private final Knowledge knowledge =
        new Knowledge(new KnowsHabit(false, false, false, 3, false, 0, 0));
    private OpenTable table;
    private int[] foretold = {};
    private int discards;
    int compared;

    Foretelling() {
      super(spec("reckoner").make());
    }

    @Override
    public void sitAt(OpenTable open) {
      table = open;
      foretold = new int[0];
      knowledge.sitAt(open);
    }

    /**
     * A claim leaves fewer discards than turns; three others draw and throw where there is none.
     */
    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      boolean quiet = view.discards() == discards + 4 && !view.claimedThisTurn();
      if (foretold.length > 0 && quiet && view.exchangesThisTurn() == 0) {
        assertThat(view.drawn()).isEqualTo(foretold[0]);
        compared++;
      }
      knowledge.inPlay(view);
      foretold = knowledge.draws(view, true);
      assertThat(foretold).hasSize(Math.min(3, draws(table.wallLeft())));
      discards = view.discards();
      return super.turn(view, random);
    }

    private static int draws(int wall) {
      return wall / 4;
    }
  }

  /** By rules without dead hands, at a table where nobody claims between two turns. */
  @Test
  void draws_asForetold_comeWhereNobodyClaims() {
    Foretelling foretelling = new Foretelling();
    List<Player> four = new ArrayList<>(four(spec("nearest")::make));
    four.set(2, foretelling);
    for (int deal = 0; deal < 40; deal += 5) {
      TestTable.play(deal, four);
    }
    assertThat(foretelling.compared).isGreaterThan(20);
  }

  /** Of two tiles that it needs alike, the one goes that cannot win now. */
  @Test
  void whoIsOneAway_fewerWinningTilesAreThrown_andMoreWeightMakesThemFewer() {
    long usually = needless(spec("reckoner"));
    long known = needless(spec("reckoner", "knows.who-is-one-away", true));
    long weighed =
        needless(spec("reckoner", "knows.who-is-one-away", true, "knows.risk-weight", 10));

    assertThat(known).isLessThan(usually);
    assertThat(weighed).isLessThan(known);
  }

  private static long needless(PlayerSpec spec) {
    return thrown(spec, 60).stream().filter(Thrown::needlessly).count();
  }

  @ParameterizedTest
  @CsvSource({
    "knows.who-is-one-away, true",
    "knows.what-she-waits-for, true",
    "knows.racks, true",
    "knows.next-draws, 1",
    "knows.never-the-winning-tile, true"
  })
  void mark_anythingKnown_isMarked(String setting, String value) {
    Object typed = value.equals("true") ? Boolean.TRUE : new BigDecimal(value);

    List<PlayerType> types =
        Catalog.standard().types().stream()
            .filter(type -> type.settings().containsAll(KnowsHabit.settings()))
            .toList();
    assertThat(types).hasSizeGreaterThan(5);
    for (PlayerType type : types) {
      PlayerSpec knows = new PlayerSpec(type, Map.of(setting, typed));
      assertThat(knows.mark()).contains("sees more than a seat may");
      assertThat(knows.make()).isInstanceOf(SeesOpenTable.class);
    }
  }

  @Test
  void mark_fairPlayers_haveNone() {
    assertThat(spec("reckoner").mark()).isEmpty();
    assertThat(spec("reckoner", "knows.risk-weight", 2).mark()).isEmpty();
    assertThat(spec("nearest").mark()).isEmpty();
    assertThat(spec("open-tiles").mark()).contains("sees all tiles");
  }

  @Test
  void habitPlayer_thatIsToKnowSomething_isRefusedWithoutATable() {
    SettingValues values = new SettingValues(HabitPlayer.reckoner(), Map.of("knows.racks", true));

    assertThatThrownBy(() -> new HabitPlayer(values)).isInstanceOf(IllegalArgumentException.class);
  }
}
