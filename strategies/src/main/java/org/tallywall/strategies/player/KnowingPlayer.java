package org.tallywall.strategies.player;

import java.util.List;
import org.tallywall.core.play.ClaimChoice;
import org.tallywall.core.play.ForwardingPlayer;
import org.tallywall.core.play.OpenTable;
import org.tallywall.core.play.PassStep;
import org.tallywall.core.play.Player;
import org.tallywall.core.play.SeatView;
import org.tallywall.core.play.SeesOpenTable;
import org.tallywall.core.play.TurnChoice;
import org.tallywall.core.random.RandomStream;
import org.tallywall.strategies.habit.Defending;
import org.tallywall.strategies.habit.Judging;
import org.tallywall.strategies.habit.KnowsHabit;
import org.tallywall.strategies.habit.Stance;
import org.tallywall.strategies.habit.Weighed;
import org.tallywall.strategies.setting.SettingValues;

/**
 * A player that knows something no seat may know: a yardstick for what it would be worth to know,
 * never a way of playing. It is shown the table as it lies, and what its settings named {@code
 * knows.…} say of it goes to a player that otherwise decides as usual.
 */
public final class KnowingPlayer extends ForwardingPlayer
    implements SeesOpenTable, Defending, Judging {
  private final Knowledge knowledge;
  private final Defending defending;
  private final Judging judging;

  private <P extends Player & Defending & Judging> KnowingPlayer(P usual, Knowledge knowledge) {
    super(usual);
    this.knowledge = knowledge;
    defending = usual;
    judging = usual;
  }

  /**
   * A player made of habits.
   *
   * @param values its settings
   * @return one that is shown the table, if it is to know something; else one that never sees it
   */
  public static Player habits(SettingValues values) {
    KnowsHabit habit = KnowsHabit.of(values);
    if (!habit.any()) {
      return new HabitPlayer(values);
    }
    Knowledge knowledge = new Knowledge(habit);
    return new KnowingPlayer(new HabitPlayer(values, knowledge), knowledge);
  }

  /**
   * A player that plays games out in its head. Racks and draws that it knows lie in its playouts as
   * they lie on the table.
   *
   * @param values its settings
   * @return one that is shown the table, if it is to know something; else one that never sees it
   */
  public static Player rollout(SettingValues values) {
    KnowsHabit habit = KnowsHabit.of(values);
    if (!habit.any()) {
      return new RolloutPlayer(values);
    }
    Knowledge knowledge = new Knowledge(habit);
    return new KnowingPlayer(new RolloutPlayer(values, knowledge), knowledge);
  }

  @Override
  public void sitAt(OpenTable table) {
    knowledge.sitAt(table);
  }

  /** The passes, unless a question in play says otherwise. */
  @Override
  protected void asking() {
    knowledge.inPasses();
  }

  @Override
  public ClaimChoice claim(SeatView view, RandomStream random) {
    knowledge.inPlay(view);
    return behind().claim(view, random);
  }

  @Override
  public TurnChoice turn(SeatView view, RandomStream random) {
    knowledge.inPlay(view);
    return behind().turn(view, random);
  }

  @Override
  public int aim(SeatView view) {
    asked(view);
    return behind().aim(view);
  }

  /** A question that may come at any time. */
  private void asked(SeatView view) {
    if (view.discards() > 0) {
      knowledge.inPlay(view);
    } else {
      knowledge.inPasses();
    }
  }

  @Override
  public Stance lastStance() {
    return defending.lastStance();
  }

  @Override
  public int handInMind(SeatView view) {
    asked(view);
    return judging.handInMind(view);
  }

  @Override
  public int lineThatNeeds(SeatView view, int tile) {
    knowledge.inPlay(view);
    return judging.lineThatNeeds(view, tile);
  }

  @Override
  public List<Weighed> discards(SeatView view) {
    knowledge.inPlay(view);
    return judging.discards(view);
  }

  @Override
  public List<Weighed> claims(SeatView view) {
    knowledge.inPlay(view);
    return judging.claims(view);
  }

  @Override
  public List<Weighed> passes(SeatView view, PassStep step) {
    knowledge.inPasses();
    return judging.passes(view, step);
  }
}
