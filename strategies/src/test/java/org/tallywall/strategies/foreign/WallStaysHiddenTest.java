package org.tallywall.strategies.foreign;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.Deal;
import org.tallywall.core.play.Game;
import org.tallywall.core.play.GameListener;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TableSetup;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.GameStreams;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.rules.TableRules;
import org.tallywall.core.tile.Tile;
import org.tallywall.core.tile.TileSet;
import org.tallywall.strategies.TestTable;
import org.tallywall.strategies.player.NearestPlayer;

/**
 * A player from outside gets a view and a stream with each question. By what is public, neither
 * leads to the wall, to the racks of the others, or to the seed from which they could be dealt.
 */
class WallStaysHiddenTest {
  private static final long SEED = 20_261_125;
  private static final TableSetup SETUP = new TableSetup(TestTable.HANDS, TableRules.STANDARD);

  /** Tries, at every question, to make of its stream the numbers that shuffled the wall. */
  private static class Spy implements Player {
    private final NearestPlayer usual = new NearestPlayer();
    private final int[] wall;
    int questions;

    Spy(int[] wall) {
      this.wall = wall;
    }

    private void tries(RandomStream random) {
      questions++;
      for (Purpose purpose : Purpose.values()) {
        for (int sample = 0; sample < 2; sample++) {
          refusedOrOther(purpose, sample, random);
        }
      }
    }

    private void refusedOrOther(Purpose purpose, int sample, RandomStream random) {
      GameStreams streams = new GameStreams();
      streams.playOn(random);
      if (purpose == Purpose.ROLLOUT) {
        assertThat(shuffledBy(random.beside(purpose, sample))).isNotEqualTo(wall);
        assertThat(shuffledBy(streams.turnTo(purpose, 0, sample, 0))).isNotEqualTo(wall);
        return;
      }
      assertThatThrownBy(() -> random.beside(purpose, sample))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> streams.turnTo(purpose, 0, sample, 0))
          .isInstanceOf(IllegalStateException.class);
      GameStreams others = new GameStreams();
      others.playOn(streams);
      assertThatThrownBy(() -> others.turnTo(purpose, 0, sample, 0))
          .isInstanceOf(IllegalStateException.class);
    }

    private static int[] shuffledBy(RandomStream random) {
      int[] tiles = TileSet.USUAL.tiles();
      random.shuffle(tiles, tiles.length);
      return tiles;
    }

    @Override
    public boolean declares(SeatView view, RandomStream random) {
      tries(random);
      return usual.declares(view, random);
    }

    @Override
    public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
      tries(random);
      return usual.pass(view, step, random);
    }

    @Override
    public boolean stops(SeatView view, RandomStream random) {
      tries(random);
      return usual.stops(view, random);
    }

    @Override
    public int courtesyNumber(SeatView view, RandomStream random) {
      tries(random);
      return usual.courtesyNumber(view, random);
    }

    @Override
    public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
      tries(random);
      return usual.courtesyTiles(view, number, random);
    }

    @Override
    public ClaimChoice claim(SeatView view, RandomStream random) {
      tries(random);
      return usual.claim(view, random);
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      tries(random);
      return usual.turn(view, random);
    }
  }

  private static int[] wall(Deal deal) {
    int[] wall = new int[deal.size()];
    Arrays.setAll(wall, deal::tile);
    return wall;
  }

  @Test
  void streamOfAQuestion_leadsToNoOtherPurpose() {
    Deal deal = Deal.of(SEED, 3, TileSet.USUAL);
    List<Spy> spies = new ArrayList<>();
    for (int seat = 0; seat < 4; seat++) {
      spies.add(new Spy(wall(deal)));
    }
    new Game(SETUP, spies, new GameListener() {}).play(deal);
    assertThat(spies).allSatisfy(spy -> assertThat(spy.questions).isGreaterThan(5));
  }

  /** A yardstick that a player seats at a game of its own is shown that game's guess, no more. */
  @Test
  void gameInTheHead_showsTheGuessAlone() {
    Deal deal = Deal.of(SEED, 3, TileSet.USUAL);
    List<long[]> seeds = new ArrayList<>();
    Player curious =
        new Spy(wall(deal)) {
          @Override
          public TurnChoice turn(SeatView view, RandomStream random) {
            if (seeds.isEmpty()) {
              Position position = new Position();
              position.begin(view, random);
              for (int kind = 0; kind < Tile.KINDS; kind++) {
                assertThat(position.rack((view.seat() + 1) % 4).held(kind)).isZero();
              }
              Seer seer = new Seer(wall(deal));
              assertThatThrownBy(
                      () ->
                          new Game(
                                  view.table(),
                                  List.of(seer, seer, seer, seer),
                                  new GameListener() {})
                              .playOn(position))
                  .isInstanceOf(StopException.class);
              seeds.add(new long[] {seer.shown.deal().seed(), seer.shown.deal().number()});
              assertThat(wall(seer.shown.deal())).isNotEqualTo(wall(deal));
            }
            return super.turn(view, random);
          }
        };
    new Game(
            SETUP,
            List.of(curious, new NearestPlayer(), new NearestPlayer(), new NearestPlayer()),
            new GameListener() {})
        .play(deal);
    assertThat(seeds).containsExactly(new long[] {0, 0});
  }

  private static final class StopException extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  /** Is shown a table and leaves it when it is asked. */
  private static final class Seer extends Spy implements SeesOpenTable {
    private OpenTable shown;

    Seer(int[] wall) {
      super(wall);
    }

    @Override
    public void sitAt(OpenTable table) {
      shown = table;
    }

    @Override
    public TurnChoice turn(SeatView view, RandomStream random) {
      throw new StopException();
    }
  }

  @Test
  void stream_hasNoMoreThanNumbersToGive() {
    Set<String> names = new TreeSet<>();
    for (Method method : RandomStream.class.getDeclaredMethods()) {
      if (Modifier.isPublic(method.getModifiers()) || Modifier.isProtected(method.getModifiers())) {
        names.add(method.getName());
      }
    }
    assertThat(names).containsExactly("below", "beside", "happens", "nextLong", "shuffle");
    assertThat(RandomStream.class.getFields()).isEmpty();
  }

  /**
   * Whatever can be reached from a view by public methods without arguments or with a seat or a
   * number: no table, no deal, no stream, and no view but this.
   */
  @Test
  void view_leadsToNoDealAndNoTable() {
    Set<Class<?>> seen = new LinkedHashSet<>(List.of(SeatView.class));
    List<Class<?>> open = new ArrayList<>(seen);
    while (!open.isEmpty()) {
      for (Method method : open.remove(0).getMethods()) {
        Class<?> type = element(method.getReturnType());
        boolean ours = type.getName().startsWith("org.tallywall") && !type.isEnum();
        if (ours && !Modifier.isStatic(method.getModifiers()) && seen.add(type)) {
          open.add(type);
        }
      }
    }
    assertThat(seen)
        .doesNotContain(
            Deal.class, OpenTable.class, RandomStream.class, GameStreams.class, Position.class)
        .hasSizeGreaterThan(5);
  }

  private static Class<?> element(Class<?> type) {
    return type.isArray() ? element(type.getComponentType()) : type;
  }
}
