package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Setting;
import org.tallywall.strategies.habit.SettingValues;
import org.tallywall.strategies.habit.Stance;

/**
 * Plays as {@code watchful}, but near a hand it tries its claims and discards out: it guesses the
 * hidden tiles many times ({@link LikelyTiles}), plays the rest of the game out after each choice
 * that is worth considering, and takes another choice than {@code watchful} would where the
 * playouts show it to be better by more than chance explains.
 *
 * <p>All choices meet the same guesses. Half of the playouts go to all of them, the rest to the
 * better half, again and again, and always to the usual choice as well ({@link Playouts}); where
 * none looks better, no more are spent. Passes, exchanges and wins are those of {@code watchful}.
 * The players of the playouts are of one kind, at all four seats; they do not defend.
 */
public final class RolloutPlayer implements Player, Defending {
  private static final String NAME = "rollout.";

  private final HabitPlayer usual;
  private final Playouts playouts;
  private final Candidates candidates;

  /**
   * A player.
   *
   * @param values its settings
   */
  public RolloutPlayer(SettingValues values) {
    usual = new HabitPlayer(values);
    candidates =
        new Candidates(
            values,
            WorthTrying.of(values),
            values.whole(NAME + "candidates"),
            values.number(NAME + "worth-at-least"));
    playouts =
        new Playouts(
            new LikelyTiles(),
            List.of(inner(values.word(NAME + "inner"))),
            new Effort(values.whole(NAME + "playouts"), values.number(NAME + "surer-by"), true));
  }

  /**
   * A player that tries choices out in a way of its own.
   *
   * @param usual whose choices it takes unless another is better
   * @param playouts how choices are compared
   * @param candidates choices compared at most
   */
  RolloutPlayer(HabitPlayer usual, Playouts playouts, int candidates) {
    this.usual = usual;
    this.playouts = playouts;
    this.candidates =
        new Candidates(
            SettingValues.standard(HabitPlayer.watchful()), WorthTrying.ALWAYS, candidates, 0);
  }

  static Supplier<Player> inner(String word) {
    return switch (word) {
      case "reckoner" -> () -> new HabitPlayer(SettingValues.standard(HabitPlayer.reckoner()));
      case "watchful" -> () -> new HabitPlayer(SettingValues.standard(HabitPlayer.watchful()));
      case "random-legal" -> RandomLegalPlayer::new;
      default -> NearestPlayer::new;
    };
  }

  /**
   * The settings: those of the playouts, then those of a watchful player.
   *
   * @return in the order listed
   */
  public static List<Setting> settings() {
    List<Setting> list = new ArrayList<>();
    list.add(
        Setting.number(
            NAME + "playouts",
            "1000",
            "4",
            "20000",
            "playouts for one decision, over all choices that are compared"));
    list.add(
        Setting.number(
            NAME + "candidates", "3", "2", "14", "choices that are compared, the likeliest first"));
    list.add(
        Setting.word(
            NAME + "inner",
            "who plays the games out",
            "nearest",
            "reckoner",
            "watchful",
            "random-legal"));
    list.add(
        Setting.number(
            NAME + "worth-at-least",
            "0.75",
            "0.0",
            "1.0",
            "share of the worth left by the least missed tile that a discard must leave to be"
                + " tried, and be no tile that the defence keeps; with 0 any is tried"));
    list.add(
        Setting.number(
            NAME + "surer-by",
            "1.0",
            "0.0",
            "5.0",
            "standard errors by which a choice must be better than the usual one to be taken"));
    list.addAll(WorthTrying.settings());
    list.addAll(HabitPlayer.watchful());
    return List.copyOf(list);
  }

  @Override
  public boolean declares(SeatView view, RandomStream random) {
    return usual.declares(view, random);
  }

  @Override
  public PassChoice pass(SeatView view, PassStep step, RandomStream random) {
    return usual.pass(view, step, random);
  }

  @Override
  public boolean stops(SeatView view, RandomStream random) {
    return usual.stops(view, random);
  }

  @Override
  public int courtesyNumber(SeatView view, RandomStream random) {
    return usual.courtesyNumber(view, random);
  }

  @Override
  public int[] courtesyTiles(SeatView view, int number, RandomStream random) {
    return usual.courtesyTiles(view, number, random);
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    ClaimChoice first = usual.claim(view, random);
    if (view.complete() || view.offered() == Tile.JOKER) {
      return first;
    }
    List<ClaimChoice> choices = candidates.claims(view, first);
    if (choices.size() < 2) {
      return first;
    }
    return choices.get(
        playouts.best(view, random, choices.size(), (own, at) -> own.set(choices.get(at))));
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice first = usual.turn(view, random);
    if (!(first instanceof TurnChoice.Discard discard)) {
      return first;
    }
    List<TurnChoice> choices = candidates.discards(view, discard.tile());
    if (choices.size() < 2) {
      return first;
    }
    return choices.get(
        playouts.best(view, random, choices.size(), (own, at) -> own.set(choices.get(at))));
  }

  @Override
  public Stance lastStance() {
    return usual.lastStance();
  }

  @Override
  public int aim(SeatView view) {
    return usual.aim(view);
  }
}
