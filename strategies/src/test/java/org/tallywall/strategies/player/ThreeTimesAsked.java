package org.tallywall.strategies.player;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.Function;
import java.util.function.Supplier;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.Purpose;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.random.StreamKey;

/**
 * Puts every question three times: to a player that is kept, to the same player again, and to one
 * made for this question alone. The numbers of each question are made anew by their key, so all
 * three must answer alike.
 */
final class ThreeTimesAsked implements SeesOpenTable {
  private static final int DECLARE = 0;
  private static final int STOP = 7;
  private static final int COURTESY_NUMBER = 8;
  private static final int COURTESY_TILES = 9;
  private static final int CLAIM = 10;
  private static final int TURN = 11;
  private static final int QUESTIONS_PER_EVENT = 16;

  /** How many questions were put. */
  long questions;

  private final long seed;
  private final Supplier<Player> maker;
  private final Player kept;
  private long deal;
  private OpenTable table;

  ThreeTimesAsked(long seed, Supplier<Player> maker) {
    this.seed = seed;
    this.maker = maker;
    this.kept = maker.get();
  }

  /** From now on this deal is played. */
  void deal(long number) {
    deal = number;
  }

  /** Whoever wants to be shown the table is shown it, those made for one question too. */
  @Override
  public void sitAt(OpenTable open) {
    table = open;
    seated(kept);
  }

  private Player seated(Player player) {
    if (player instanceof SeesOpenTable yardstick) {
      yardstick.sitAt(table);
    }
    return player;
  }

  private <T> T ask(SeatView view, int number, Question<T> question) {
    return ask(view, number, question, answer -> answer);
  }

  /** Asks three times and compares what a function makes of the answers. */
  private <T, C> T ask(SeatView view, int number, Question<T> question, Function<T, C> compared) {
    questions++;
    T first = question.put(kept, numbers(view, number));
    T again = question.put(kept, numbers(view, number));
    T fresh = question.put(seated(maker.get()), numbers(view, number));
    assertThat(compared.apply(again)).as("asked again").isEqualTo(compared.apply(first));
    assertThat(compared.apply(fresh)).as("a fresh player").isEqualTo(compared.apply(first));
    return first;
  }

  private RandomStream numbers(SeatView view, int number) {
    long moment = QUESTIONS_PER_EVENT * view.events() + number;
    return new RandomStream(new StreamKey(seed, deal, Purpose.DECISION, view.seat(), 0, moment));
  }

  private interface Question<T> {
    T put(Player player, RandomStream numbers);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return ask(view, DECLARE, (player, numbers) -> player.declares(view, numbers));
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return ask(view, step.number(), (player, numbers) -> player.pass(view, step, numbers));
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return ask(view, STOP, (player, numbers) -> player.stops(view, numbers));
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return ask(view, COURTESY_NUMBER, (player, numbers) -> player.courtesyNumber(view, numbers));
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return ask(
        view,
        COURTESY_TILES,
        (player, numbers) -> player.courtesyTiles(view, number, numbers),
        tiles -> java.util.Arrays.stream(tiles).boxed().toList());
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return ask(view, CLAIM, (player, numbers) -> player.claim(view, numbers));
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    return ask(view, TURN, (player, numbers) -> player.turn(view, numbers));
  }

  @Override
  public int aim(SeatView view) {
    int first = kept.aim(view);
    assertThat(kept.aim(view)).isEqualTo(first);
    assertThat(seated(maker.get()).aim(view)).isEqualTo(first);
    return first;
  }
}
