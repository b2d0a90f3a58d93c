package org.tallywall.strategies.player;

import java.util.ArrayList;
import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.PassChoice;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.core.tile.Tile;
import org.tallywall.strategies.guess.LikelyTiles;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.setting.Setting;
import org.tallywall.strategies.setting.SettingValues;

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
public final class RolloutPlayer implements Player, Defending, Judging {
  private static final Setting<Integer> PLAYOUTS =
      Setting.whole("rollout.playouts")
          .from(4)
          .to(20000)
          .usual(1000)
          .says("plays this many games out for one decision, over all choices that it compares");
  private static final Setting<Integer> CANDIDATES =
      Setting.whole("rollout.candidates")
          .from(2)
          .to(14)
          .usual(3)
          .says("compares at most this many choices, the likeliest first");
  private static final Setting<Inner> INNER =
      Setting.choice("rollout.inner", Inner.class)
          .usual(Inner.NEAREST)
          .says(
              "plays the games out: as nearest (nearest), as reckoner (reckoner), as watchful "
                  + "(watchful), at random (random-legal)");
  private static final Setting<Double> WORTH_AT_LEAST =
      Setting.decimal("rollout.worth-at-least")
          .from(0.0)
          .to(1.0)
          .usual(0.75)
          .says(
              "tries a discard out only if it leaves a share of at least this much of the worth "
                  + "that the least missed tile leaves, and the defense lets it go; 0 tries any");
  private static final Setting<Double> SURER_BY =
      Setting.decimal("rollout.surer-by")
          .from(0.0)
          .to(5.0)
          .usual(1.0)
          .says(
              "takes another choice than the usual one only if it is better by this many standard "
                  + "errors");

  private final HabitPlayer usual;
  private final Playouts playouts;
  private final Candidates candidates;

  /**
   * A player.
   *
   * @param values its settings
   */
  public RolloutPlayer(SettingValues values) {
    this(values, Knowledge.none(values));
  }

  /**
   * A player that may know more than its seat.
   *
   * @param values its settings
   * @param knowledge what it knows besides
   */
  RolloutPlayer(SettingValues values, Knowledge knowledge) {
    usual = new HabitPlayer(values, knowledge);
    candidates =
        new Candidates(
            values, WorthTrying.of(values), values.get(CANDIDATES), values.get(WORTH_AT_LEAST));
    playouts =
        new Playouts(
            knowledge.guess(new LikelyTiles()),
            List.of(values.get(INNER).maker()),
            new Effort(values.get(PLAYOUTS), values.get(SURER_BY), true));
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

  /**
   * The settings: those of the playouts, then those of a watchful player.
   *
   * @return in the order listed
   */
  public static List<Setting<?>> settings() {
    List<Setting<?>> list = new ArrayList<>();
    list.add(PLAYOUTS);
    list.add(CANDIDATES);
    list.add(INNER);
    list.add(WORTH_AT_LEAST);
    list.add(SURER_BY);
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
        playouts.best(view, random, choices.size(), (own, at) -> own.claim(choices.get(at))));
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    TurnChoice first = usual.turn(view, random);
    if (!(first instanceof TurnChoice.Discard discard)) {
      return first;
    }
    List<TurnChoice> choices = candidates.discards(view, discard.tile());
    choices.removeIf(choice -> !choice.equals(first) && !usual.mayThrow(choice));
    if (choices.size() < 2) {
      return first;
    }
    return choices.get(
        playouts.best(view, random, choices.size(), (own, at) -> own.turn(choices.get(at))));
  }

  @Override
  public Stance lastStance() {
    return usual.lastStance();
  }

  @Override
  public int aim(SeatView view) {
    return usual.aim(view);
  }

  @Override
  public int handInMind(SeatView view) {
    return usual.handInMind(view);
  }

  @Override
  public int lineThatNeeds(SeatView view, int tile) {
    return usual.lineThatNeeds(view, tile);
  }

  /** What the usual choice goes by; playouts may prefer another. */
  @Override
  public List<Weighed> discards(SeatView view) {
    return usual.discards(view);
  }

  /** What the usual choice goes by; playouts may prefer another. */
  @Override
  public List<Weighed> claims(SeatView view) {
    return usual.claims(view);
  }

  @Override
  public List<Weighed> passes(SeatView view, PassStep step) {
    return usual.passes(view, step);
  }
}
