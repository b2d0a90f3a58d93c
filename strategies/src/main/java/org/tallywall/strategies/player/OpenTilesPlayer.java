package org.tallywall.strategies.player;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.Position;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.Seats;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.setting.SettingValues;

/**
 * Sees all racks and the wall. It is no way of playing, but an upper bound that shows how much is
 * luck.
 *
 * <p>After each of its likeliest choices it plays the rest of the game out on the tiles as they
 * really lie, and takes the choice that pays most. What the others will do it does not know: it
 * takes the mean over playouts by players of four kinds. Passes and exchanges are those of {@code
 * reckoner}, and so is what it does where all choices come to the same.
 */
public final class OpenTilesPlayer implements SeesOpenTable {
  private static final int CANDIDATES = 5;
  private static final int PLAYOUTS = 20;

  private final RolloutPlayer tries;
  private OpenTable table;

  /** A player that is shown the table when it sits down. */
  public OpenTilesPlayer() {
    HabitPlayer usual = new HabitPlayer(SettingValues.standard(HabitPlayer.reckoner()));
    tries =
        new RolloutPlayer(
            usual, new Playouts(this::lay, inner(), new Effort(PLAYOUTS, 0, false)), CANDIDATES);
  }

  private static List<Supplier<Player>> inner() {
    Map<String, Object> hastier = Map.of("aim.haste", new BigDecimal("0.4"));
    return List.of(
        NearestPlayer::new,
        () -> new HabitPlayer(SettingValues.standard(HabitPlayer.reckoner())),
        () -> new HabitPlayer(SettingValues.standard(HabitPlayer.watchful())),
        () -> new HabitPlayer(new SettingValues(HabitPlayer.reckoner(), hastier)));
  }

  @Override
  public void sitAt(OpenTable open) {
    table = open;
  }

  /** The tiles as they lie. */
  private void lay(SeatView view, RandomStream random, Position into) {
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      table.view(seat).copyRack(into.rack(seat));
    }
    int start = table.deal().size() - table.wallLeft();
    for (int at = 0; at < table.wallLeft(); at++) {
      into.wall(at, table.deal().tile(start + at));
    }
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return true;
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return tries.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return tries.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return tries.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return tries.courtesyTiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    return tries.claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    return tries.turn(view, random);
  }

  @Override
  public int aim(SeatView view) {
    return tries.aim(view);
  }
}
