package org.tallywall.core.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.tallywall.core.TestCards;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.record.GameEvent;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.record.GameRecorder;
import org.tallywall.core.record.RecordJson;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Rack;
import org.tallywall.core.tile.TileSet;

/**
 * What the rules promise of every game, EC-71 to EC-75, over many seeded games of mixed players.
 */
class EdgeCasesOfAllGamesTest {
  private static final ConcreteHands HANDS = new ConcreteHands(MixedTable.card());
  private static final long SEED = 7_175L;

  /** 2,000 games, six tables of rules, every seating of greedy players and players by lot. */
  @Test
  void ec71_everyEventOfManyGames_leavesTheBooksBalanced() {
    long events = 0;
    int[] ends = new int[Outcome.How.values().length];
    for (int number = 0; number < 2000; number++) {
      TableRules rules = MixedTable.rules().get(number % MixedTable.rules().size());
      BalancedBooks books = new BalancedBooks();
      Game game = new Game(new TableSetup(HANDS, rules), MixedTable.players(number), books);
      Outcome outcome = game.play(Deal.of(SEED, number, rules.tiles()));
      ends[outcome.how().ordinal()]++;
      events += books.checked;
    }
    assertThat(events).isGreaterThan(200_000);
    assertThat(ends[Outcome.How.MAHJONG.ordinal()]).isGreaterThan(300);
    assertThat(ends[Outcome.How.WALL_GAME.ordinal()]).isGreaterThan(300);
  }

  @Test
  void ec72_viewOfASeat_isTheSameWhereOnlyHiddenTilesDiffer() {
    for (int watched = 0; watched < 4; watched++) {
      List<String> one = views(watched, "E W", "G");
      List<String> other = views(watched, "G W", "E");
      assertThat(one).hasSizeGreaterThan(20).isEqualTo(other);
    }
  }

  /** Views of one seat in a game in which two tiles of a neighbor and of the wall's end vary. */
  private static List<String> views(int watched, String hidden, String last) {
    StackedGame game = StackedGame.withPasses().lastDraws(last);
    int other = Seats.right(watched);
    game.rack(other, hidden).rack(Seats.across(watched), "S0").rack(watched, "444c 1b");
    List<String> views = new ArrayList<>();
    game.seat(watched)
        .watch(
            (question, view) -> {
              if (view.wallLeft() > 0) {
                views.add(question + ViewText.of(view));
              }
            });
    game.run();
    return views;
  }

  @Test
  void ec72_drawnTile_isSeenByItsDrawerOnly() {
    GameState state = new GameState(new TableSetup(HANDS, TableRules.STANDARD));
    state.begin(Deal.of(SEED, 1, TileSet.USUAL));
    int thrown = state.racks[0].tiles()[0];
    state.discard(0, thrown);
    state.closeWindow();
    int drawn = state.draw(1);
    assertThat(state.views[1].drawn()).isEqualTo(drawn);
    for (int seat : new int[] {0, 2, 3}) {
      assertThat(state.views[seat].drawn()).isEqualTo(-1);
    }
  }

  /** The tiles that the views may not tell apart do differ. */
  @Test
  void ec72_viewOfTheOtherSeat_tellsTheTilesApart() {
    StackedGame one = StackedGame.withPasses().rack(1, "E W").lastDraws("G");
    StackedGame other = StackedGame.withPasses().rack(1, "G W").lastDraws("E");
    assertThat(firstView(one)).isNotEqualTo(firstView(other));
  }

  private static String firstView(StackedGame game) {
    List<String> views = new ArrayList<>();
    game.seat(1).watch((question, view) -> views.add(ViewText.of(view)));
    game.run();
    return views.get(0);
  }

  @Test
  void ec73_sameSeed_sameLogWhateverTheThreads() throws InterruptedException, ExecutionException {
    List<String> alone = new ArrayList<>();
    for (int number = 0; number < 120; number++) {
      alone.add(log(number, UnaryOperator.identity()));
    }
    ExecutorService threads = Executors.newFixedThreadPool(7);
    try {
      List<Future<String>> logs = new ArrayList<>();
      for (int number = 119; number >= 0; number--) {
        int game = number;
        logs.add(0, threads.submit(() -> log(game, UnaryOperator.identity())));
      }
      for (int number = 0; number < 120; number++) {
        assertThat(logs.get(number).get()).isEqualTo(alone.get(number));
      }
    } finally {
      threads.shutdownNow();
    }
  }

  /** One table plays many deals, and any deal alone gives the same log. */
  @Test
  void ec73_tableUsedForManyGames_playsEachAsAFreshOne() {
    TableSetup setup = new TableSetup(HANDS, TableRules.STANDARD);
    GameRecorder recorder = new GameRecorder();
    List<Player> players = MixedTable.players(6);
    Game table = new Game(setup, players, recorder);
    for (int deal = 0; deal < 60; deal++) {
      table.play(Deal.of(SEED, deal, TileSet.USUAL));
      String used = RecordJson.line(recorder.record(header(setup.rules(), deal)));
      GameRecorder fresh = new GameRecorder();
      new Game(setup, MixedTable.players(6), fresh).play(Deal.of(SEED, deal, TileSet.USUAL));
      assertThat(RecordJson.line(fresh.record(header(setup.rules(), deal)))).isEqualTo(used);
    }
  }

  @Test
  void ec74_numbersThatAPlayerUses_changeNothingForOthers() {
    for (int number = 0; number < 120; number += 16) {
      String plain = log(number, UnaryOperator.identity());
      assertThat(log(number, Wasteful::new)).isEqualTo(plain);
    }
  }

  /** Draws numbers from the stream of every question before a player that uses none answers. */
  private static final class Wasteful implements Player {
    private final Player player;

    Wasteful(Player player) {
      this.player = player;
    }

    private static RandomStream spent(SeatView view, RandomStream random) {
      for (int at = 0; at < 10 + view.seat(); at++) {
        random.nextLong();
      }
      return random;
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return player.declares(view, spent(view, random));
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return player.pass(view, step, spent(view, random));
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return player.stops(view, spent(view, random));
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return player.courtesyNumber(view, spent(view, random));
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return player.courtesyTiles(view, number, spent(view, random));
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return player.claim(view, spent(view, random));
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      return player.turn(view, spent(view, random));
    }
  }

  private static String log(int number, UnaryOperator<Player> dress) {
    TableRules rules = MixedTable.rules().get(number % 3);
    GameRecorder recorder = new GameRecorder();
    List<Player> players = MixedTable.players(number).stream().map(dress).toList();
    new Game(new TableSetup(HANDS, rules), players, recorder)
        .play(Deal.of(SEED, number, rules.tiles()));
    return RecordJson.line(recorder.record(header(rules, number)));
  }

  private static GameRecord.Header header(TableRules rules, int deal) {
    return new GameRecord.Header(
        "",
        SEED,
        0,
        deal,
        "",
        -1,
        new GameRecord.CardName(HANDS.card().name(), HANDS.card().digest()),
        rules.switches(),
        List.of("a", "b", "c", "d"));
  }

  /** Wall, dice and the tiles that go on in a blind pass do not depend on who sits where. */
  @Test
  void ec74_wallDiceAndBlindPasses_doNotDependOnThePlayers() {
    List<String> seen = new ArrayList<>();
    for (int kind = 0; kind < 2; kind++) {
      int players = kind;
      for (int number = 0; number < 40; number++) {
        seen.add(players + " " + number + ": " + blindTiles(number, players));
      }
    }
    for (int number = 0; number < 40; number++) {
      String first = seen.get(number).substring(2);
      assertThat(seen.get(40 + number).substring(2)).isEqualTo(first);
    }
  }

  /**
   * The wall, the dice, and what goes on when South passes one own tile first left: the others do
   * as scripted or, before and after that pass, use as many numbers as they like.
   */
  private static String blindTiles(int number, int kind) {
    List<Player> players = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      players.add(kind == 0 ? new FirstTiles(0) : new FirstTiles(50 * seat));
    }
    GameRecorder recorder = new GameRecorder();
    TableSetup setup = new TableSetup(new ConcreteHands(TestCards.testCard()), TableRules.STANDARD);
    new Game(setup, players, recorder).play(Deal.of(SEED, number, TileSet.USUAL));
    GameRecord record = recorder.record(header(setup.rules(), number));
    GameEvent.Pass pass = (GameEvent.Pass) record.events().get(9);
    assertThat(pass.step()).isEqualTo("left-1");
    assertThat(pass.forwarded()).hasSize(2);
    return record.wall() + " " + record.dice() + " " + pass;
  }

  /**
   * Passes its first naturals, as South one only where that is allowed; uses numbers for nothing.
   */
  private static final class FirstTiles implements Player {
    private final int numbers;
    private final ScriptedPlayer rest = new ScriptedPlayer();

    FirstTiles(int numbers) {
      this.numbers = numbers;
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return false;
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      for (int at = 0; at < numbers; at++) {
        random.nextLong();
      }
      Rack rack = new Rack();
      view.copyRack(rack);
      int number = view.seat() == 1 && step == PassStep.LEFT_1 ? 1 : 3;
      return PassChoice.of(java.util.Arrays.copyOf(rack.tiles(), number));
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return rest.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return rest.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return rest.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return rest.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      return rest.turn(view, random);
    }
  }

  /** Players by lot fail as soon as they are asked and no move is legal. */
  @Test
  void ec75_legalMoves_areThereAtEveryQuestion() {
    for (TableRules rules : MixedTable.rules()) {
      for (int number = 0; number < 40; number++) {
        List<Player> players = List.of(new AnyMove(), new AnyMove(), new AnyMove(), new AnyMove());
        Outcome outcome =
            new Game(new TableSetup(HANDS, rules), players, GameListener.NONE)
                .play(Deal.of(SEED, number, rules.tiles()));
        assertThat(outcome).isNotNull();
      }
    }
  }

  /** A greedy player made anew for every question plays the same game as one that stays. */
  @Test
  void playerMadeInMidGame_answersAsOneThatSatThereFromTheDeal() {
    for (int number = 0; number < 64; number += 16) {
      assertThat(log(number, player -> new Anew())).isEqualTo(log(number, player -> player));
    }
  }

  /** Asks a new greedy player every time. */
  private static final class Anew implements Player {
    @Override
    public boolean declares(SeatView view, RandomStream random) {
      return new GreedyPlayer().declares(view, random);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      return new GreedyPlayer().pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      return new GreedyPlayer().stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      return new GreedyPlayer().courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      return new GreedyPlayer().courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      return new GreedyPlayer().claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      return new GreedyPlayer().turn(view, random);
    }
  }
}
